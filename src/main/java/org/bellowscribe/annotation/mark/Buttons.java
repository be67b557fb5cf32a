package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.annotation.style.ButtonLabels;
import org.bellowscribe.annotation.style.RowNames;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.HomeKeys;
import org.bellowscribe.solver.Step;

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
        ButtonLabels labels = arrangement.style().buttons();
        ButtonText text = new ButtonText(arrangement);
        List<Mark> marks = new ArrayList<>();
        if (labels.twoLines()) {
            for (BellowsDirection direction : BellowsDirection.values()) {
                marks.addAll(line(
                        arrangement,
                        labels.fingers() ? FINGERS + "-" + direction.label() : direction.label(),
                        step -> step.direction() == direction
                                ? text.of(step)
                                : arrangement.style().filler()));
            }
        } else {
            marks.addAll(line(arrangement, labels.fingers() ? FINGERS : id(), text::of));
        }
        marks.addAll(rowName(arrangement));
        marks.addAll(boxes(arrangement));
        return marks;
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return ButtonLegend.of(arrangement);
    }

    private static List<Mark> line(Arrangement arrangement, String name, Function<Step, String> text) {
        List<Mark> marks = new ArrayList<>();
        for (Step step : arrangement.pressed()) {
            marks.add(new Mark.Syllable(step.event().index(), name, text.apply(step)));
        }
        return marks;
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

    /** Says once which row the bare numbers belong to. */
    private static List<Mark> rowName(Arrangement arrangement) {
        int rows = arrangement.instrument().rows();
        RowNames names = arrangement.style().words().rows();
        RowUse use = RowUse.of(arrangement.solution(), arrangement.instrument());
        String name = names.name(use.main(), rows);
        if (name.isEmpty() || use.isNumbered() || arrangement.pressed().isEmpty()) {
            return List.of();
        }
        int first = arrangement.pressed().get(0).event().index();
        return List.of(new Mark.Words(first, Topic.ROW, name));
    }
}
