package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.annotation.style.RowNames;
import org.bellowscribe.instrument.HomeKeys;

/**
 * Button numbers below the notes. Width is scarce at quick notes, so the usual case is a bare number and only the
 * exception has a sign: the pull, a row other than the one used most, a button that stays down through a reversal.
 */
public final class Buttons implements Annotator {

    // A line of fingers is told from one of buttons, which a hand may change.
    private static final String FINGERS = "fingers";

    @Override
    public String id() {
        return "buttons";
    }

    @Override
    public String summary() {
        return "The number of the button below every note, with signs for the pull, the less used rows and a button"
                + " held through a reversal.";
    }

    @Override
    public boolean byDefault() {
        return true;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        boolean fingers = arrangement.style().buttons().fingers();
        NumberLines lines = new NumberLines(arrangement, new ButtonText(arrangement));
        List<Mark> marks = new ArrayList<>(lines.marks(fingers ? FINGERS : id(), fingers ? FINGERS + "-" : ""));
        marks.addAll(rowName(arrangement));
        marks.addAll(boxes(arrangement));
        return marks;
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return ButtonLegend.of(arrangement);
    }

    /** Says once that fingers without numbers hold for other boxes in the same keys too. */
    private static List<Mark> boxes(Arrangement arrangement) {
        boolean holds = arrangement.style().buttons().fingers()
                && !arrangement.instrument().alsoFor().isEmpty()
                && !arrangement.pressed().isEmpty();
        if (!holds) {
            return List.of();
        }
        String keys = HomeKeys.of(arrangement.instrument()).values().stream()
                .map(arrangement.style().leftHand()::name)
                .collect(Collectors.joining("/"));
        int first = arrangement.pressed().get(0).event().index();
        return List.of(new Mark.Words(
                first, Topic.ALSO_FOR, arrangement.style().practice().anyStart().with("keys", keys)));
    }

    /** Says once which row the bare numbers belong to, or each line of them. */
    private static List<Mark> rowName(Arrangement arrangement) {
        int rows = arrangement.instrument().rows();
        RowNames names = arrangement.style().words().rows();
        RowUse use = RowUse.of(arrangement.solution(), arrangement.instrument());
        List<Integer> lines = NumberLines.rows(arrangement);
        String name = lines.size() > 1 ? names.ofLines(lines, rows) : names.name(use.main(), rows);
        if (name.isEmpty() || use.isNumbered() || arrangement.pressed().isEmpty()) {
            return List.of();
        }
        int first = arrangement.pressed().get(0).event().index();
        return List.of(new Mark.Words(first, Topic.ROW, name));
    }
}
