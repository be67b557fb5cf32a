package org.bellowscribe.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DanceTempoTest {

    private static DanceTempo of(String words, int beats, int beatType) {
        return DanceTempo.of(words, new TimeSignature(beats, beatType));
    }

    @ParameterizedTest
    @CsvSource({
        "The Harvest Reel, 4, 4, 208",
        "The Harvest Reel, 2, 4, 104",
        "The Kitchen Jig, 6, 8, 171",
        "The Garden Slip Jig, 9, 8, 162",
        "Mill Hornpipe, 4, 4, 148",
        "Pond Polka, 2, 4, 116",
        "Snow Waltz, 3, 4, 150",
        "Schottische from the Hill, 4, 4, 112",
        "Evening Mazurka, 3, 4, 110",
        "Grand March, 4, 4, 120"
    })
    void wordOfTheTitleGivesTheTempo(String title, int beats, int beatType, double quarters) {
        DanceTempo tempo = of(title, beats, beatType);
        assertEquals(quarters, tempo.quartersPerMinute(), 1e-9);
        assertTrue(tempo.fromTitle());
    }

    @Test
    void timeSignatureDecidesWhereTheTitleDoesNot() {
        assertEquals("jig", of("Rain on the Roof", 6, 8).name());
        assertEquals("waltz", of("Rain on the Roof", 3, 4).name());
        assertFalse(of("Rain on the Roof", 3, 4).fromTitle());
    }

    @Test
    void partsOfWordsAreNoDances() {
        assertFalse(of("Treelight", 4, 4).fromTitle());
        assertFalse(of("Jigsaw", 4, 4).fromTitle());
    }

    @Test
    void everyTimeSignatureHasATempo() {
        assertTrue(of("", 7, 16).quartersPerMinute() > 0);
    }
}
