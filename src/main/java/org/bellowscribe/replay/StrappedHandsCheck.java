package org.bellowscribe.replay;

import java.util.HashSet;
import java.util.Set;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Hand;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.solver.Step;

/**
 * The fingers of a concertina. Home is, from the middle outwards, index, middle, ring and little finger: on the left 5,
 * 4, 3 and 1, on the right 6, 7, 8 and 9 (first source of anglo-cg-20). Of the two outermost columns the little finger has both, the ring finger the inner one where it must.
 */
final class StrappedHandsCheck {

    /** Fingers that may play the columns from the middle outwards. */
    private static final String[] FINGERS = {"1", "2", "3", "43", "4"};

    private final Instrument instrument;
    private final Findings findings;

    StrappedHandsCheck(Instrument instrument, Findings findings) {
        this.instrument = instrument;
        this.findings = findings;
    }

    /** Checks a step with a finger for every button. */
    void check(Step step) {
        Set<String> taken = new HashSet<>();
        for (int i = 0; i < step.buttons().size(); i++) {
            Button button = step.buttons().get(i);
            int finger = step.fingers().get(i);
            int outwards = outwards(button);
            findings.require(
                    outwards < FINGERS.length && FINGERS[outwards].contains(String.valueOf(finger)),
                    step.event(),
                    "strapped-hands",
                    "Finger %d of the %s hand does not reach button %s.",
                    finger,
                    button.hand().label(),
                    button.id());
            findings.require(
                    taken.add(button.hand() + " " + finger),
                    step.event(),
                    "one-finger-each",
                    "Finger %d of the %s hand holds two buttons.",
                    finger,
                    button.hand().label());
        }
        findings.require(
                step.handOn() == 1, step.event(), "strapped-hands", "Strapped hands have moved to %d.", step.handOn());
    }

    /** Returns how many columns lie between a button and the middle of the instrument. */
    private int outwards(Button button) {
        return (int) instrument.buttons().stream()
                .filter(other -> other.hand() == button.hand())
                .map(Button::number)
                .distinct()
                .filter(other -> button.hand() == Hand.LEFT ? other > button.number() : other < button.number())
                .count();
    }
}
