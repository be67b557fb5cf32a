package org.bellowscribe.annotation.mark;

import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.annotation.style.Meaning;
import org.bellowscribe.solver.Step;

/** How far the bellows are open before they first move, as the nearest fraction that a player can judge by eye. */
public final class Opening implements Annotator {

    @Override
    public String id() {
        return "opening";
    }

    @Override
    public String summary() {
        return "How far the bellows are open at the start, above the first note or rest in which they move.";
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
        Step first = Reversals.firstMove(arrangement);
        String text = OpeningText.before(first, arrangement);
        return List.of(new Mark.Words(first.event().index(), Topic.OPENING, text));
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return marks(arrangement).stream()
                .map(mark -> new LegendEntry(
                        ((Mark.Words) mark).text(), arrangement.style().legend().say(Meaning.OPENING)))
                .toList();
    }
}
