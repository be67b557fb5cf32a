package org.bellowscribe.annotation.mark;

import java.util.stream.Collectors;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.style.ButtonLabels;
import org.bellowscribe.solver.Step;

/** Writes the buttons of a note group. */
final class ButtonText {

    private final Arrangement arrangement;
    private final ButtonLabels labels;
    private final RowUse rows;
    private final HeldButtons held;

    /** Counts what must be known of the whole tune. */
    ButtonText(Arrangement arrangement) {
        this.arrangement = arrangement;
        this.labels = arrangement.style().buttons();
        this.rows = RowUse.of(arrangement.solution(), arrangement.instrument());
        this.held = new HeldButtons(arrangement);
    }

    /** Returns the buttons with the signs of their rows, of those held and of the direction. */
    String of(Step step) {
        String buttons = step.buttons().stream()
                .map(button -> held.isHeld(step, button)
                        ? labels.held().with("button", rows.label(button, labels))
                        : rows.label(button, labels))
                .collect(Collectors.joining(labels.between()));
        return labels.direction(step.direction()).with("buttons", buttons);
    }

    /** Returns true if a button is held at some note. */
    boolean holdsAny() {
        return arrangement.notes().stream()
                .anyMatch(step -> step.buttons().stream().anyMatch(button -> held.isHeld(step, button)));
    }
}
