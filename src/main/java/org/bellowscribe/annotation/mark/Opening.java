package org.bellowscribe.annotation.mark;

import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.annotation.style.WordLabels;
import org.bellowscribe.solver.Step;

/** How far the bellows are open when the tune begins, as the nearest fraction that a player can judge by eye. */
public final class Opening implements Annotator {

    /** Openings in twelfths of the capacity. */
    private static final int[] TWELFTHS = {0, 3, 4, 6, 8, 9, 12};

    @Override
    public String id() {
        return "opening";
    }

    @Override
    public String summary() {
        return "How far the bellows are open at the start, above the first note.";
    }

    @Override
    public boolean byDefault() {
        return true;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        if (arrangement.notes().isEmpty()) {
            return List.of();
        }
        Step first = arrangement.notes().get(0);
        double capacity = 1000 * arrangement.instrument().bellows().capacity();
        String text = text(
                nearest(12 * first.openingBefore() / capacity),
                arrangement.style().words());
        return List.of(new Mark.Words(first.event().index(), Topic.OPENING, text));
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return marks(arrangement).stream()
                .map(mark -> new LegendEntry(((Mark.Words) mark).text(), "how far the bellows are open at the start"))
                .toList();
    }

    /** Returns the nearest of the openings; of two equally near the smaller. */
    private static int nearest(double twelfths) {
        int nearest = 0;
        for (int candidate : TWELFTHS) {
            if (Math.abs(candidate - twelfths) < Math.abs(nearest - twelfths)) {
                nearest = candidate;
            }
        }
        return nearest;
    }

    private static String text(int twelfths, WordLabels words) {
        return switch (twelfths) {
            case 0 -> words.closed();
            case 12 -> words.fullyOpen();
            case 6 -> words.opening().with("part", "1/2");
            default -> words.opening().with("part", twelfths % 4 == 0 ? twelfths / 4 + "/3" : twelfths / 3 + "/4");
        };
    }
}
