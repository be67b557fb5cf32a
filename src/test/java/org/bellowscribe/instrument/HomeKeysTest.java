package org.bellowscribe.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

class HomeKeysTest {

    private static final String C_ROW = "G3/B3 C4/D4 E4/F4 G4/A4 C5/B4 E5/D5";

    @Test
    void rowThatPushesTheTonicChordHasAKey() {
        assertEquals(Map.of(1, PitchClass.parse("C")), HomeKeys.of(SmallInstrument.of(C_ROW)));
    }

    @Test
    void accidentalsOnOneButtonDoNotHideTheKey() {
        assertEquals(Map.of(1, PitchClass.parse("C")), HomeKeys.of(SmallInstrument.of("F#4/G#4 " + C_ROW)));
    }

    /** The upper row of an Anglo concertina nearly pushes A major, but pulls nothing of its scale. */
    @Test
    void rowOfAccidentalsHasNoKey() {
        assertEquals(Map.of(), HomeKeys.of(SmallInstrument.of("E3/F3 A3/Bb3 C#4/Eb4 A4/G4 G#4/Bb4 C#5/Eb5 A5/G5")));
    }

    @Test
    void fewHelperButtonsHaveNoKey() {
        assertEquals(Map.of(), HomeKeys.of(SmallInstrument.of("C4/D4 E4/F4 G4/A4")));
    }
}
