package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Points;

/**
 * Charges a note that is tied over a bar line and yet struck anew: on another button, by another finger or after a turn of
 * the bellows. So dear that it is done only where nothing else can be played.
 */
public final class HeldOver implements PairRule {

    private static final String EACH = "each";

    @Override
    public String id() {
        return "held-over";
    }

    @Override
    public String summary() {
        return "A note that is tied over a bar line sounds on: its button stays down and the bellows do not turn.";
    }

    @Override
    public List<String> cases() {
        return List.of(EACH);
    }

    @Override
    public int points(Moment before, Choice from, Moment after, Choice to, Points points) {
        if (!after.event().heldOver()) {
            return 0;
        }
        boolean goesOn = from.direction() == to.direction()
                && from.buttons().equals(to.buttons())
                && from.fingers().equals(to.fingers());
        return goesOn ? 0 : points.of(EACH);
    }
}
