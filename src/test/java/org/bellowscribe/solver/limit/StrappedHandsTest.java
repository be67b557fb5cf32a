package org.bellowscribe.solver.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StrappedHandsTest {

    private static final Grip ANGLO = new Grip(true, 5, 6);
    private static final Moment MOMENT =
            new Moment(new Event(0, 0, Fraction.ZERO, Fraction.QUARTER, List.of(new Pitch(60)), List.of(0)), 1, false);

    private static Choice choice(int handOn, int number, int finger, Grip grip) {
        Button button = new Button(1, number, new Pitch(60), null, number <= 5 ? Hand.LEFT : Hand.RIGHT);
        return new Choice(BellowsDirection.PUSH, handOn, List.of(button), List.of(finger), grip);
    }

    @ParameterizedTest(name = "button {0}, finger {1}: {2}")
    @CsvSource({
        "1,4,true",
        "1,3,false",
        "2,4,true",
        "2,3,true",
        "5,1,true",
        "5,2,false",
        "6,1,true",
        "10,4,true",
        "10,1,false"
    })
    void fingersReachTheirColumns(int number, int finger, boolean reached) {
        assertEquals(reached, new StrappedHands().allows(MOMENT, choice(1, number, finger, ANGLO)));
    }

    @Test
    void handsDoNotMove() {
        assertFalse(new StrappedHands().allows(MOMENT, choice(2, 6, 1, ANGLO)));
    }

    @Test
    void handThatMovesIsLeftAlone() {
        assertTrue(new StrappedHands().allows(MOMENT, choice(4, 6, 3, Grip.MOVING)));
    }
}
