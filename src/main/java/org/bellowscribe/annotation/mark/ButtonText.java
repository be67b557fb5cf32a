package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.style.ButtonLabels;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.Step;

/** Writes the buttons of a note group. */
final class ButtonText {

    private final Arrangement arrangement;
    private final ButtonLabels labels;
    private final RowUse rows;
    private final HeldButtons held;

    private final UnaryOperator<Button> numbering;

    /** Counts what must be known of the whole tune. */
    ButtonText(Arrangement arrangement) {
        this(arrangement, UnaryOperator.identity());
    }

    /**
     * Counts what must be known of the whole tune.
     *
     * @param numbering gives a button the number that is written
     */
    ButtonText(Arrangement arrangement, UnaryOperator<Button> numbering) {
        this.numbering = numbering;
        this.arrangement = arrangement;
        this.labels = arrangement.style().buttons();
        this.rows = RowUse.of(arrangement.solution(), arrangement.instrument());
        this.held = new HeldButtons(arrangement);
    }

    /** Returns the buttons with the signs of their rows, of those held and of the direction. */
    String of(Step step) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < step.buttons().size(); i++) {
            Button button = step.buttons().get(i);
            String label = labels.fingers() && !rows.isNumbered()
                    ? rows.label(button.row(), String.valueOf(step.fingers().get(i)), labels)
                    : rows.label(numbering.apply(button), labels);
            texts.add(held(step, button, label));
        }
        return joined(step, texts);
    }

    /** Returns the buttons of one row, as its own line has them: without the sign of the row; empty if there are none. */
    String of(Step step, int row) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < step.buttons().size(); i++) {
            Button button = step.buttons().get(i);
            if (button.row() == row) {
                int number = labels.fingers()
                        ? step.fingers().get(i)
                        : numbering.apply(button).number();
                texts.add(held(step, button, String.valueOf(number)));
            }
        }
        return texts.isEmpty() ? "" : joined(step, texts);
    }

    private String held(Step step, Button button, String label) {
        return held.isHeld(step, button) ? labels.held().with("button", label) : label;
    }

    private String joined(Step step, List<String> texts) {
        return labels.direction(step.direction()).with("buttons", String.join(labels.between(), texts));
    }

    /** Returns true if a button is held at some note. */
    boolean holdsAny() {
        return arrangement.notes().stream()
                .anyMatch(step -> step.buttons().stream().anyMatch(button -> held.isHeld(step, button)));
    }
}
