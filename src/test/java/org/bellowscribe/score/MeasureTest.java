package org.bellowscribe.score;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.junit.jupiter.api.Test;

class MeasureTest {

    private static final Fraction EIGHTH = Fraction.of(1, 2);

    private static Measure measure(int beats, int beatType, Fraction beatOffset) {
        TimeSignature time = new TimeSignature(beats, beatType);
        return new Measure(0, "1", time.measureLength().minus(beatOffset), beatOffset, time, new Key(0, Mode.MAJOR));
    }

    @Test
    void beatsFallOnQuartersInHalvesToo() {
        assertTrue(measure(2, 2, Fraction.ZERO).isOnBeat(Fraction.QUARTER));
        assertFalse(measure(4, 4, Fraction.ZERO).isOnBeat(EIGHTH));
    }

    @Test
    void beatsOfCompoundTimesAreThreeEighthsApart() {
        assertTrue(measure(6, 8, Fraction.ZERO).isOnBeat(Fraction.of(3, 2)));
        assertFalse(measure(6, 8, Fraction.ZERO).isOnBeat(Fraction.QUARTER));
    }

    @Test
    void pickUpBeginsWhereItsBarWouldStand() {
        assertFalse(measure(2, 4, Fraction.of(3, 2)).isOnBeat(Fraction.ZERO));
        assertTrue(measure(2, 4, Fraction.of(3, 2)).isOnBeat(EIGHTH));
    }
}
