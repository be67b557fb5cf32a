package org.bellowscribe.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RoadWordsTest {

    @ParameterizedTest
    @CsvSource({
        "D.C., D.C.",
        "D.C. al Fine, D.C. al Fine",
        "D. C. al fine, D.C. al Fine",
        "DC al Fine, D.C. al Fine",
        "(D.C. al Fine), D.C. al Fine",
        "Da Capo, D.C.",
        "Da Capo al Fine, D.C. al Fine",
        "D.C. al Coda, D.C. al Coda",
        "D.S., D.S.",
        "D.S. al Fine, D.S. al Fine",
        "D.S. al Coda, D.S. al Coda",
        "Dal Segno, D.S.",
        "Dal Segno al Coda, D.S. al Coda",
        "D.S. to Coda, D.S. al Coda"
    })
    void jumpsAreKnownInTheUsualSpellings(String words, String jump) {
        assertEquals(jump, String.valueOf(RoadWords.read(words, RoadSigns.NONE).jump()));
    }

    @Test
    void jumpMaySayThatRepeatsAreTaken() {
        Jump jump = RoadWords.read("D.C. al Fine con rep.", RoadSigns.NONE).jump();
        assertNotNull(jump);
        assertTrue(jump.withRepeats());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Fine", "FINE", "fine.", "(Fine)", "4x Fine"})
    void fineIsKnown(String words) {
        assertTrue(RoadWords.read(words, RoadSigns.NONE).fine());
    }

    @ParameterizedTest
    @ValueSource(strings = {"To Coda", "to coda", "al Coda", "To \u2295", "To Coda 1"})
    void departureIsKnown(String words) {
        assertNotNull(RoadWords.read(words, RoadSigns.NONE).toCoda());
    }

    @Test
    void codaAndSegnoAreKnown() {
        assertEquals("", RoadWords.read("Coda", RoadSigns.NONE).coda());
        assertEquals("2", RoadWords.read("Coda 2", RoadSigns.NONE).coda());
        assertEquals("", RoadWords.read("Segno", RoadSigns.NONE).segno());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "dolce", "Finely", "decresc.", "Dance", "dim.", "Refrain", "a fine tune", "SEGUE"})
    void otherWordsSayNothing(String words) {
        assertSame(RoadSigns.NONE, RoadWords.read(words, RoadSigns.NONE));
    }
}
