package org.bellowscribe.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.junit.jupiter.api.Test;

class FirstNotesTest {

    private static String first(String notes) {
        Tune tune = TuneText.of(notes, 120, List.of(0));
        return FirstNotes.of(tune);
    }

    @Test
    void restsAreNoNotes() {
        assertEquals("C4 D4", first("r C4 r D4"));
    }

    @Test
    void sevenNotesAreEnough() {
        assertEquals("C4 D4 E4 F4 G4 A4 B4", first("C4 D4 E4 F4 G4 A4 B4 C5 D5"));
    }

    @Test
    void accidentalsAreSpelledInTheKey() {
        assertEquals("F#4", first("F#4"));
    }
}
