package org.bellowscribe.solver.limit;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Grip;
import org.bellowscribe.instrument.Hand;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Pitch;
import org.junit.jupiter.api.Test;

class OneFingerEachTest {

    private static final Moment MOMENT = new Moment(
            new Event(0, 0, Fraction.ZERO, Fraction.QUARTER, List.of(new Pitch(60), new Pitch(64)), List.of(0, 1)),
            1,
            false);
    private static final List<Button> BUTTONS =
            List.of(new Button(1, 3, new Pitch(60), null), new Button(2, 3, new Pitch(64), null));

    private static boolean oneFinger(Button... buttons) {
        List<Integer> fingers = Collections.nCopies(buttons.length, 1);
        return new OneFingerEach().allows(MOMENT, new Choice(BellowsDirection.PUSH, 3, List.of(buttons), fingers));
    }

    @Test
    void oneFingerLiesAcrossTwoButtonsSideBySide() {
        assertTrue(oneFinger(BUTTONS.get(0), BUTTONS.get(1)));
    }

    @Test
    void otherButtonsUnderOneFingerAreRefused() {
        Button low = BUTTONS.get(0);
        assertFalse(oneFinger(low, new Button(1, 4, new Pitch(64), null)));
        assertFalse(oneFinger(low, new Button(2, 4, new Pitch(64), null)));
        assertFalse(oneFinger(low, new Button(3, 3, new Pitch(64), null)));
        assertFalse(oneFinger(low, BUTTONS.get(1), new Button(3, 3, new Pitch(67), null)));
    }

    @Test
    void twoFingersAreAllowed() {
        assertTrue(new OneFingerEach().allows(MOMENT, new Choice(BellowsDirection.PUSH, 3, BUTTONS, List.of(1, 2))));
    }

    @Test
    void sameFingerOfTheOtherHandIsAnotherFinger() {
        List<Button> buttons = List.of(
                new Button(1, 5, new Pitch(60), null, Hand.LEFT), new Button(1, 6, new Pitch(64), null, Hand.RIGHT));
        assertTrue(new OneFingerEach()
                .allows(MOMENT, new Choice(BellowsDirection.PUSH, 1, buttons, List.of(1, 1), new Grip(true, 5, 6))));
    }
}
