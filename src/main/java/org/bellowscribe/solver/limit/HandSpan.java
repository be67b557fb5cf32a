package org.bellowscribe.solver.limit;

import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.StepLimit;

/**
 * Of a hand that moves: any two fingers span as many buttons as lie between them at rest, and one more for the index
 * (lower) and the little finger (higher). They do not cross, and on two buttons side by side they are neighbors. Common
 * practice, no source.
 */
public final class HandSpan implements StepLimit {

    private static final int INDEX = 1;
    private static final int LITTLE = 4;

    @Override
    public String id() {
        return "hand-span";
    }

    @Override
    public String summary() {
        return "Any two fingers of a note group lie within the span of the hand and do not cross.";
    }

    @Override
    public boolean allows(Moment moment, Choice choice) {
        if (choice.grip().strapped()) {
            return true;
        }
        for (int i = 0; i < choice.buttons().size(); i++) {
            for (int j = i + 1; j < choice.buttons().size(); j++) {
                boolean lower = choice.fingers().get(i) <= choice.fingers().get(j);
                if (!(lower ? spans(choice, i, j) : spans(choice, j, i))) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean spans(Choice choice, int low, int high) {
        Button lower = choice.buttons().get(low);
        Button higher = choice.buttons().get(high);
        int finger = choice.fingers().get(low);
        int other = choice.fingers().get(high);
        int buttons = higher.number() - lower.number();
        if (buttons == 0) {
            return other - finger <= 1;
        }
        int most = other - finger + (finger == INDEX ? 1 : 0) + (other == LITTLE ? 1 : 0);
        return buttons > 0 && buttons <= most;
    }
}
