package org.bellowscribe.replay;

import java.util.List;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.Step;

/**
 * The hand that moves along the rows, in its place, holds all its buttons: each under its finger or one beyond at either
 * end, two side by side on neighboring rows also by one finger or by two neighbors, and no two farther apart than their
 * fingers span.
 */
final class MovingHandCheck {

    private static final int INDEX_FINGER = 1;
    private static final int LITTLE_FINGER = 4;

    private final Findings findings;

    MovingHandCheck(Findings findings) {
        this.findings = findings;
    }

    void check(Step step) {
        List<Button> buttons = step.buttons();
        for (int i = 0; i < buttons.size(); i++) {
            checkReach(step, buttons.get(i), step.fingers().get(i));
            for (int j = 0; j < i; j++) {
                checkPair(step, j, i);
            }
        }
        for (int finger = INDEX_FINGER; finger <= LITTLE_FINGER; finger++) {
            int held = finger;
            findings.require(
                    step.fingers().stream().filter(each -> each == held).count() <= 2,
                    step.event(),
                    "one-finger-each",
                    "Finger %d holds more than two buttons.",
                    finger);
        }
    }

    private void checkReach(Step step, Button button, int finger) {
        boolean crowded = step.buttons().stream().anyMatch(other -> areSideBySide(button, other));
        boolean lower = finger == INDEX_FINGER || crowded;
        int least = step.handOn() + finger - (lower ? 2 : 1);
        int most = step.handOn() + finger - (finger == LITTLE_FINGER || crowded ? 0 : 1);
        findings.require(
                finger >= INDEX_FINGER
                        && finger <= LITTLE_FINGER
                        && button.number() >= least
                        && button.number() <= most,
                step.event(),
                "hand-reach",
                "Finger %d does not reach button %s with the hand on button %d.",
                finger,
                button.id(),
                step.handOn());
    }

    private void checkPair(Step step, int one, int other) {
        boolean swap = step.fingers().get(one) > step.fingers().get(other);
        int low = swap ? other : one;
        int high = swap ? one : other;
        Button lower = step.buttons().get(low);
        Button higher = step.buttons().get(high);
        int finger = step.fingers().get(low);
        int next = step.fingers().get(high);
        if (finger == next) {
            findings.require(
                    areSideBySide(lower, higher),
                    step.event(),
                    "one-finger-each",
                    "Finger %d holds buttons %s and %s, which do not lie side by side.",
                    finger,
                    lower.id(),
                    higher.id());
            return;
        }
        int span = next - finger + (finger == INDEX_FINGER ? 1 : 0) + (next == LITTLE_FINGER ? 1 : 0);
        int way = higher.number() - lower.number();
        findings.require(
                way == 0 ? next == finger + 1 : way > 0 && way <= span,
                step.event(),
                "hand-span",
                "Fingers %d and %d do not hold buttons %s and %s together.",
                finger,
                next,
                lower.id(),
                higher.id());
    }

    private static boolean areSideBySide(Button one, Button other) {
        return one.number() == other.number() && Math.abs(one.row() - other.row()) == 1;
    }
}
