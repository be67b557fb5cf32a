package org.bellowscribe.solver.limit;

import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.StepLimit;

/**
 * Of a hand that moves: every button lies under its finger, or one beyond for the index (lower) and the little finger
 * (higher). Where two buttons of a group lie side by side on neighboring rows, the finger next to theirs comes to one of
 * them.
 */
public final class HandReach implements StepLimit {

    @Override
    public String id() {
        return "hand-reach";
    }

    @Override
    public String summary() {
        return "A hand in one place reaches four buttons of each row, and one more at either end by stretching.";
    }

    @Override
    public boolean allows(Moment moment, Choice choice) {
        if (choice.grip().strapped()) {
            return true;
        }
        for (int i = 0; i < choice.buttons().size(); i++) {
            int finger = choice.fingers().get(i);
            int beyond = choice.buttons().get(i).number() - (choice.handOn() + finger - 1);
            boolean reached = beyond == 0
                    || (finger == 1 && beyond == -1)
                    || (finger == 4 && beyond == 1)
                    || (Math.abs(beyond) == 1 && choice.hasButtonBeside(i));
            if (!reached) {
                return false;
            }
        }
        return true;
    }
}
