package org.bellowscribe.annotation.mark;

import java.util.stream.Collectors;
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

    /** Counts what must be known of the whole tune. */
    ButtonText(Arrangement arrangement) {
        this.arrangement = arrangement;
        this.labels = arrangement.style().buttons();
        this.rows = RowUse.of(arrangement.solution(), arrangement.instrument());
        this.neighbors = PlayNeighbors.of(arrangement.tune());
    }

    /** Returns the buttons with the signs of their rows, of those held and of the direction. */
    String of(Step step) {
        String buttons = step.buttons().stream()
                .map(button -> isHeld(step, button)
                        ? labels.held().with("button", rows.label(button, labels))
                        : rows.label(button, labels))
                .collect(Collectors.joining(labels.between()));
        return labels.direction(step.direction()).with("buttons", buttons);
    }

    /** Of several buttons only those are held that are also down at every note that can come before. */
    private boolean isHeld(Step step, Button button) {
        return step.held()
                && neighbors.before(step.event().index()).stream()
                        .allMatch(before -> arrangement.step(before).buttons().contains(button));
    }
}
