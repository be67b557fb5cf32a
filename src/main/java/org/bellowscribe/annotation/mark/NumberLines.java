package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.MarkLines;
import org.bellowscribe.annotation.style.ButtonLines;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.Step;

/** The lines in which numbers of buttons stand below the notes, from the top. */
final class NumberLines {

    private final Arrangement arrangement;
    private final ButtonText text;

    /**
     * Creates lines.
     *
     * @param text what is written at a note
     */
    NumberLines(Arrangement arrangement, ButtonText text) {
        this.arrangement = arrangement;
        this.text = text;
    }

    /** Returns the rows that have a line each, from the top; none if the lines are not for rows. */
    static List<Integer> rows(Arrangement arrangement) {
        boolean byRow = arrangement.style().buttons().lines() == ButtonLines.ROWS
                && !RowUse.of(arrangement.solution(), arrangement.instrument()).isNumbered();
        return byRow
                ? arrangement.pressed().stream()
                        .flatMap(step -> step.buttons().stream())
                        .map(Button::row)
                        .distinct()
                        .sorted()
                        .toList()
                : List.of();
    }

    /** Returns how many lines there are. */
    int count() {
        return arrangement.style().buttons().twoLines()
                ? BellowsDirection.values().length
                : Math.max(1, rows(arrangement).size());
    }

    /**
     * Returns the marks.
     *
     * @param whole name of a line of all numbers
     * @param before what the names of several lines begin with
     */
    List<Mark> marks(String whole, String before) {
        String filler = arrangement.style().filler();
        List<Mark> marks = new ArrayList<>();
        if (arrangement.style().buttons().twoLines()) {
            for (BellowsDirection direction : BellowsDirection.values()) {
                marks.addAll(line(
                        before + direction.label(), step -> step.direction() == direction ? text.of(step) : filler));
            }
            return marks;
        }
        List<Integer> rows = rows(arrangement);
        rows.forEach(row -> marks.addAll(line(before + MarkLines.ofRow(row), step -> {
            String numbers = text.of(step, row);
            return numbers.isEmpty() ? filler : numbers;
        })));
        return rows.isEmpty() ? line(whole, text::of) : marks;
    }

    private List<Mark> line(String name, Function<Step, String> label) {
        List<Mark> marks = new ArrayList<>();
        for (Step step : arrangement.pressed()) {
            marks.add(new Mark.Syllable(step.event().index(), name, label.apply(step)));
        }
        return marks;
    }
}
