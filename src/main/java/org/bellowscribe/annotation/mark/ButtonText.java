package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.PlayNeighbors;
import org.bellowscribe.annotation.style.ButtonLabels;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.Step;

/** Writes the buttons of a note group. */
final class ButtonText {

    private final Arrangement arrangement;
    private final ButtonLabels labels;
    private final RowUse rows;
    private final PlayNeighbors neighbors;
    /** The note that a player sets out with, whom nothing comes before; -1 if there is none. */
    private final int first;

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
        this.neighbors = PlayNeighbors.of(arrangement.tune());
        this.first = arrangement.tune().eventOrder().stream()
                .filter(event -> !arrangement.step(event).event().isRest())
                .findFirst()
                .orElse(-1);
    }

    /** Returns the buttons with the signs of their rows, of those held and of the direction. */
    String of(Step step) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < step.buttons().size(); i++) {
            Button button = step.buttons().get(i);
            String label = labels.fingers() && !rows.isNumbered()
                    ? rows.label(button.row(), String.valueOf(step.fingers().get(i)), labels)
                    : rows.label(numbering.apply(button), labels);
            texts.add(isHeld(step, button) ? labels.held().with("button", label) : label);
        }
        return labels.direction(step.direction()).with("buttons", String.join(labels.between(), texts));
    }

    /** Returns true if a button is held at some note. */
    boolean holdsAny() {
        return arrangement.notes().stream()
                .anyMatch(step -> step.buttons().stream().anyMatch(button -> isHeld(step, button)));
    }

    /** A button is held only if, on every way that leads there, it is down and the bellows turn. */
    private boolean isHeld(Step step, Button button) {
        return step.held()
                && step.event().index() != first
                && neighbors.before(step.event().index()).stream()
                        .map(arrangement::step)
                        .allMatch(before -> before.direction() != step.direction()
                                && before.buttons().contains(button));
    }
}
