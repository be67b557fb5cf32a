package org.bellowscribe.instrument;

import static org.bellowscribe.instrument.BellowsDirection.PULL;
import static org.bellowscribe.instrument.BellowsDirection.PUSH;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

class DegreeBassesTest {

    private static final Instrument BOX =
            SmallInstrument.withBasses(SmallInstrument.of("C4/D4"), "d/a D/A g/d G/D b/em B/E c/c C/C");

    @Test
    void chordAndBassAreFoundInEachDirection() {
        DegreeBasses d = DegreeBasses.of(BOX, PitchClass.parse("D"), Third.MAJOR);
        assertEquals(List.of(PUSH, PULL), d.bass());
        assertEquals("D push pull, d push pull", d.label());
        assertEquals(2, d.support());
    }

    @Test
    void majorChordIsNoSupportForAMinorDegree() {
        DegreeBasses b = DegreeBasses.of(BOX, PitchClass.parse("B"), Third.MINOR);
        assertEquals(List.of(), b.chord());
        assertEquals(1, b.support());
    }

    /** S18: "Bellows and Strings" blog, 2010: Am is the A bass with the c chord, both pulled. */
    @Test
    void bassUnderTheRelativeMajorChordIsFound() {
        DegreeBasses a = DegreeBasses.of(BOX, PitchClass.parse("A"), Third.MINOR);
        assertEquals(List.of(PULL), a.bassUnderRelative());
        assertEquals("A pull, A+c pull", a.label());
    }

    @Test
    void degreeWithoutAnySoundHasADash() {
        assertEquals(
                "-", DegreeBasses.of(BOX, PitchClass.parse("F"), Third.MAJOR).label());
    }
}
