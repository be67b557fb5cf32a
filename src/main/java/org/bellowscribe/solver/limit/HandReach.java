package org.bellowscribe.solver.limit;

import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.StepLimit;

/**
 * Of a hand that moves: every button lies under its finger, or one beyond for the index (lower) and the little finger
 * (higher) unless the hand leans. A hand that leans does not play a group over the outer and an inner row. Where two buttons of a group lie side by side on neighboring rows, the finger next to
 * theirs comes to one of them.
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
        if (choice.leaning() && choice.isOverOuterAndInnerRow()) {
            return false;
        }
        for (int i = 0; i < choice.buttons().size(); i++) {
            int finger = choice.fingers().get(i);
            Button button = choice.buttons().get(i);
            int beyond = button.number() - (choice.handOn() + finger - 1);
            boolean stretched = (finger == 1 && beyond == -1) || (finger == 4 && beyond == 1);
            boolean reached = beyond == 0
                    || (stretched && !choice.leaning())
                    || (Math.abs(beyond) == 1 && choice.hasButtonBeside(i));
            if (!reached) {
                return false;
            }
        }
        return true;
    }
}
