package org.bellowscribe.score;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ModeGuessTest {

    @ParameterizedTest
    @CsvSource({"1, G, MAJOR", "1, E, MINOR", "1, A, DORIAN", "1, D, MIXOLYDIAN", "1, B, MAJOR", "-1, D, MINOR"})
    void lastNoteTellsTheMode(int fifths, String last, Mode mode) {
        assertEquals(mode, ModeGuess.of(fifths, PitchClass.parse(last)));
    }
}
