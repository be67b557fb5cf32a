package org.bellowscribe.solver.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Grip;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandReachTest {

    private static final Moment MOMENT =
            new Moment(new Event(0, 0, Fraction.ZERO, Fraction.QUARTER, List.of(new Pitch(60)), List.of(0)), 1, false);

    @ParameterizedTest(name = "hand on 3, finger {1} on button {0}: {2}")
    @CsvSource({"3,1,true", "6,4,true", "2,1,true", "7,4,true", "1,1,false", "8,4,false", "4,1,false", "3,2,false"})
    void handReachesFourButtonsAndOneMoreAtEitherEnd(int number, int finger, boolean reached) {
        Button button = new Button(1, number, new Pitch(60), null);
        Choice choice = new Choice(BellowsDirection.PUSH, 3, List.of(button), List.of(finger));
        assertEquals(reached, new HandReach().allows(MOMENT, choice));
    }

    @ParameterizedTest(name = "hand on 3, fingers {0} and {1} on buttons 4 of two rows: {2}")
    @CsvSource({"2,2,true", "2,3,true", "1,2,true", "1,3,true", "2,4,false"})
    void fingerComesToAButtonBesideItsOwnWhereTwoLieSideBySide(int one, int other, boolean reached) {
        List<Button> buttons = List.of(new Button(1, 4, new Pitch(60), null), new Button(2, 4, new Pitch(64), null));
        Choice choice = new Choice(BellowsDirection.PUSH, 3, buttons, List.of(one, other));
        assertEquals(reached, new HandReach().allows(MOMENT, choice));
    }

    @Test
    void handThatLeansDoesNotStretchNorPlayAGroupOverOuterAndInnerRow() {
        assertEquals(true, leaning(List.of(button(2, 3)), List.of(1)));
        assertEquals(false, leaning(List.of(button(2, 2)), List.of(1)));
        assertEquals(false, leaning(List.of(button(1, 7)), List.of(4)));
        assertEquals(false, leaning(List.of(button(1, 3), button(2, 5)), List.of(1, 3)));
        assertEquals(true, leaning(List.of(button(2, 3), button(3, 5)), List.of(1, 3)));
    }

    private static Button button(int row, int number) {
        return new Button(row, number, new Pitch(60), null);
    }

    private static boolean leaning(List<Button> buttons, List<Integer> fingers) {
        Choice choice = new Choice(BellowsDirection.PUSH, 3, true, buttons, fingers, Grip.MOVING);
        return new HandReach().allows(MOMENT, choice);
    }
}
