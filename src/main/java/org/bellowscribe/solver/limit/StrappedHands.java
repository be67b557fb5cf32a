package org.bellowscribe.solver.limit;

import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.StepLimit;

/**
 * Each hand of a concertina stays in its strap: a finger reaches only what the {@link org.bellowscribe.instrument.Grip}
 * gives it, and no hand plays for the other.
 */
public final class StrappedHands implements StepLimit {

    @Override
    public String id() {
        return "strapped-hands";
    }

    @Override
    public String summary() {
        return "The hands of a concertina are strapped in one place: four fingers on five columns each.";
    }

    @Override
    public boolean allows(Moment moment, Choice choice) {
        if (!choice.grip().strapped()) {
            return true;
        }
        for (int i = 0; i < choice.buttons().size(); i++) {
            if (!choice.grip()
                    .fingers(choice.buttons().get(i), choice.handOn())
                    .contains(choice.fingers().get(i))) {
                return false;
            }
        }
        return choice.handOn() == 1;
    }
}
