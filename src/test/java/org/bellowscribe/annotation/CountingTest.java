package org.bellowscribe.annotation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CountingTest {

    private static Counting counting(int beats, int beatType, Fraction beatOffset) throws DiagnosedException {
        TimeSignature time = new TimeSignature(beats, beatType);
        Measure measure = new Measure(0, "1", time.measureLength(), beatOffset, time, new Key(0, Mode.MAJOR));
        return new Counting(measure, StyleLibrary.find(StyleLibrary.DEFAULT_ID).practice());
    }

    @ParameterizedTest
    @CsvSource({
        "4, 4, 0, 1, 1",
        "4, 4, 3, 2, &",
        "4, 4, 5, 4, e",
        "4, 4, 7, 4, a",
        "4, 4, 4, 3, trip",
        "4, 4, 5, 3, let",
        "6, 8, 5, 2, 6",
        "6, 8, 1, 4, &",
        "5, 4, 4, 1, 5",
        "7, 8, 3, 1, 7",
        "2, 2, 2, 1, 2",
        "2, 2, 1, 1, &",
        "4, 4, 1, 5, ''"
    })
    void countsGoByTheLowerNumber(int beats, int beatType, int numerator, int denominator, String count)
            throws DiagnosedException {
        Fraction onset = Fraction.of(numerator, denominator);
        assertEquals(count, counting(beats, beatType, Fraction.ZERO).at(onset));
    }

    @Test
    void aPickUpIsCountedFromWhereItStandsInItsMeasure() throws DiagnosedException {
        Counting pickUp = counting(4, 4, Fraction.of(7, 2));
        assertEquals("&", pickUp.at(Fraction.ZERO));
        assertEquals(Fraction.of(1, 2), pickUp.toFirstBeat());
    }
}
