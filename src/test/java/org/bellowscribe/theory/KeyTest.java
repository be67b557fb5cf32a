package org.bellowscribe.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeyTest {

    @ParameterizedTest
    @CsvSource({
        "0, MAJOR, C",
        "2, MAJOR, D",
        "-1, MAJOR, F",
        "-4, MAJOR, Ab",
        "6, MAJOR, F#",
        "7, MAJOR, C#",
        "-7, MAJOR, Cb",
        "1, MINOR, E",
        "5, MINOR, G#",
        "2, DORIAN, E",
        "2, MIXOLYDIAN, A",
        "0, PHRYGIAN, E",
        "0, LYDIAN, F",
        "-6, LYDIAN, Cb",
        "0, LOCRIAN, B"
    })
    void tonicIsSpelledAsTheSignatureSpellsIt(int fifths, Mode mode, String name) {
        assertEquals(name, new Key(fifths, mode).tonicName());
    }
}
