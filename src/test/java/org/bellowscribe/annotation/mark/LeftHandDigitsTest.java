package org.bellowscribe.annotation.mark;

import static org.bellowscribe.instrument.BellowsDirection.PUSH;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Sketch;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

class LeftHandDigitsTest {

    private static final LeftHandSound G_MAJOR = LeftHandSound.chord(PitchClass.parse("G"), Third.MAJOR);

    @Test
    void everyLetterHasItsFinger() {
        Sketch sketch =
                new Sketch(1).push("1.3").bass("G").push("1.4").push("1.3").chord("G", Third.MAJOR);
        assertEquals("2 2", line(sketch));
    }

    @Test
    void fingersOfOneNoteArePartedLikeItsLetters() {
        Sketch sketch = new Sketch(1)
                .push("1.3")
                .bass("G")
                .left(Fraction.of(1, 2), G_MAJOR)
                .push("1.3")
                .left(Fraction.of(1, 2), G_MAJOR)
                .push("1.4")
                .bass("G")
                .rest(PUSH)
                .bass("G");
        assertEquals("2·2 ·2 2·2", line(sketch));
    }

    @Test
    void aRestThatBeginsAMeasureHasNone() {
        assertEquals("", line(new Sketch(1).push("1.3").measure().rest(PUSH).bass("G")));
    }

    @Test
    void theLegendNamesTheFingers() {
        assertEquals(
                List.of("2 3 4 5: left hand: index, middle, ring and little finger"),
                Texts.legend(
                        new LeftHandDigits(),
                        new Sketch(1).push("1.3").bass("G").arrangement()));
    }

    private static String line(Sketch sketch) {
        return Texts.line(new LeftHandDigits(), sketch.arrangement(), "left-hand-fingers");
    }
}
