package org.bellowscribe.annotation.mark;

import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.PlayNeighbors;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.Step;

/** Which buttons stay down while the bellows turn: on every way that leads to a note they are down and the bellows turn. */
public final class HeldButtons {

    private final Arrangement arrangement;
    private final PlayNeighbors neighbors;
    /** The note that a player sets out with, whom nothing comes before; -1 if there is none. */
    private final int first;

    /** Follows the tune through its repeats. */
    public HeldButtons(Arrangement arrangement) {
        this.arrangement = arrangement;
        this.neighbors = PlayNeighbors.of(arrangement.tune());
        this.first = arrangement.tune().eventOrder().stream()
                .filter(event -> !arrangement.step(event).event().isRest())
                .findFirst()
                .orElse(-1);
    }

    /** Returns true if a button of a step is held. */
    public boolean isHeld(Step step, Button button) {
        return step.held()
                && step.event().index() != first
                && neighbors.before(step.event().index()).stream()
                        .map(arrangement::step)
                        .allMatch(before -> before.direction() != step.direction()
                                && before.buttons().contains(button));
    }
}
