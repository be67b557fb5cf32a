package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.style.ButtonLabels;
import org.bellowscribe.annotation.style.Meaning;
import org.bellowscribe.annotation.style.Wordings;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.Step;

/** What the signs around the numbers of buttons mean, shown at buttons of the tune. */
final class ButtonLegend {

    private final Arrangement arrangement;
    private final ButtonLabels labels;
    private final Wordings<Meaning> meanings;
    private final RowUse rows;
    private final List<LegendEntry> entries = new ArrayList<>();

    private ButtonLegend(Arrangement arrangement) {
        this.arrangement = arrangement;
        this.labels = arrangement.style().buttons();
        this.meanings = arrangement.style().legend();
        this.rows = RowUse.of(arrangement.solution(), arrangement.instrument());
    }

    /** Returns the entries for what occurs. */
    static List<LegendEntry> of(Arrangement arrangement) {
        ButtonLegend legend = new ButtonLegend(arrangement);
        List<Integer> lines = NumberLines.rows(arrangement);
        if (lines.size() > 1) {
            legend.addLines(lines);
        } else {
            legend.addRows();
        }
        legend.addDirection(BellowsDirection.PUSH, Meaning.PUSHED, Meaning.PUSHED_LINE);
        legend.addDirection(BellowsDirection.PULL, Meaning.PULLED, Meaning.PULLED_LINE);
        legend.addGroup();
        legend.addHeld();
        return legend.entries;
    }

    private void addRows() {
        int count = arrangement.instrument().rows();
        arrangement.pressed().stream()
                .flatMap(step -> step.buttons().stream())
                .map(Button::row)
                .distinct()
                .sorted(Comparator.comparing((Integer row) -> row != rows.main())
                        .thenComparing(row -> row))
                .forEach(row -> {
                    Button example = firstOf(row);
                    String name = arrangement.style().words().rows().name(row, count);
                    String meaning = name.isEmpty()
                            ? meanings.say(Meaning.BUTTON, "button", example.number())
                            : meanings.say(Meaning.BUTTON_OF, Map.of("button", example.number(), "row", name));
                    entries.add(new LegendEntry(rows.label(example, labels), meaning));
                });
    }

    private void addLines(List<Integer> lines) {
        String names = arrangement
                .style()
                .words()
                .rows()
                .ofLines(lines, arrangement.instrument().rows());
        entries.add(new LegendEntry(names, meanings.say(Meaning.ROW_LINES)));
        entries.add(new LegendEntry(
                example(),
                meanings.say(Meaning.BUTTON, "button", firstOf(rows.main()).number())));
    }

    private void addDirection(BellowsDirection direction, Meaning oneLine, Meaning twoLines) {
        if (arrangement.pressed().stream().anyMatch(step -> step.direction() == direction)) {
            String sign = labels.direction(direction).with("buttons", example());
            entries.add(new LegendEntry(sign, meanings.say(labels.twoLines() ? twoLines : oneLine)));
        }
    }

    private void addGroup() {
        boolean byRow = NumberLines.rows(arrangement).size() > 1;
        arrangement.pressed().stream()
                .filter(step -> step.buttons().size() > 1 && (!byRow || isOneRow(step)))
                .limit(1)
                .map(step -> step.buttons().stream()
                        .map(button -> byRow ? String.valueOf(button.number()) : rows.label(button, labels))
                        .collect(Collectors.joining(labels.between())))
                .forEach(sign -> entries.add(new LegendEntry(sign, meanings.say(Meaning.TOGETHER_BUTTONS))));
    }

    private static boolean isOneRow(Step step) {
        return step.buttons().stream().map(Button::row).distinct().count() == 1;
    }

    private void addHeld() {
        if (new ButtonText(arrangement).holdsAny()) {
            String sign = labels.held().with("button", example());
            entries.add(new LegendEntry(sign, meanings.say(Meaning.HELD)));
        }
    }

    private Button firstOf(int row) {
        return arrangement.pressed().stream()
                .flatMap(step -> step.buttons().stream())
                .filter(button -> button.row() == row)
                .findFirst()
                .orElseThrow();
    }

    /** Returns a number without sign of a row, to show the other signs at. */
    private String example() {
        return rows.label(firstOf(rows.main()), labels);
    }
}
