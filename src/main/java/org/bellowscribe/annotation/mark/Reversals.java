package org.bellowscribe.annotation.mark;

import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.PlayNeighbors;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Step;

/** Where the bellows turn; in a rest they go nowhere unless the left hand sounds or the air button is pressed. */
public final class Reversals {

    private final Arrangement arrangement;
    private final PlayNeighbors neighbors;

    /** Follows the tune through its repeats. */
    public Reversals(Arrangement arrangement) {
        this.arrangement = arrangement;
        this.neighbors = PlayNeighbors.of(arrangement.tune(), event -> moves(arrangement.step(event.index())));
    }

    /** Returns the first step in the order of play in which the bellows move; there must be a note. */
    public static Step firstMove(Arrangement arrangement) {
        return arrangement.tune().eventOrder().stream()
                .map(arrangement::step)
                .filter(Reversals::moves)
                .findFirst()
                .orElseThrow();
    }

    /** Returns true if the bellows turn at a step, coming from at least one step that can precede it. */
    public boolean isReversal(Step step) {
        return moves(step)
                && neighbors.before(step.event().index()).stream()
                        .anyMatch(before -> arrangement.step(before).direction() != step.direction());
    }

    /** Returns true if the bellows move at a step. */
    public static boolean moves(Step step) {
        return !step.event().isRest()
                || step.air() != AirUse.NONE
                || step.leftHand().stream().anyMatch(play -> play.sound() != null);
    }
}
