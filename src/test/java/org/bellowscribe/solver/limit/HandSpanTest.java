package org.bellowscribe.solver.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Pitch;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandSpanTest {

    private static final Moment MOMENT = new Moment(
            new Event(0, 0, Fraction.ZERO, Fraction.QUARTER, List.of(new Pitch(60), new Pitch(64)), List.of(0, 1)),
            1,
            false);

    @ParameterizedTest(name = "finger {0} on button {1}, finger {2} on button {3} of the next row: {4}")
    @CsvSource({
        "1,2,2,3,true",
        "1,2,2,4,true",
        "1,2,2,5,false",
        "2,3,3,4,true",
        "2,3,3,5,false",
        "1,2,4,7,true",
        "1,2,4,8,false",
        "2,3,2,3,true",
        "2,3,3,3,true",
        "2,3,4,3,false",
        "2,4,3,3,false"
    })
    void twoFingersSpanTheirOwnButtonsAndOneMoreAtEitherEnd(int one, int on, int other, int otherOn, boolean spanned) {
        List<Button> buttons =
                List.of(new Button(1, on, new Pitch(60), null), new Button(2, otherOn, new Pitch(64), null));
        Choice choice = new Choice(BellowsDirection.PUSH, 2, buttons, List.of(one, other));
        assertEquals(spanned, new HandSpan().allows(MOMENT, choice));
    }
}
