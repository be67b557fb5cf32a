package org.bellowscribe.lefthand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

class VoicingTest {

    private static final PitchClass D = PitchClass.parse("D");

    @Test
    void aBassIsOneNoteFromE2Up() {
        assertEquals("[D3]", Voicing.notes(LeftHandSound.bass(D), 0, 2).toString());
        assertEquals(
                "[E2]",
                Voicing.notes(LeftHandSound.bass(PitchClass.parse("E")), 0, 2).toString());
    }

    @Test
    void aChordLiesInClosePosition() {
        assertEquals(
                "[F#3, A3, D4]",
                Voicing.notes(LeftHandSound.chord(D, Third.MAJOR), 0, 2).toString());
        assertEquals(
                "[G3, B3, E4]",
                Voicing.notes(LeftHandSound.chord(PitchClass.parse("E"), Third.MINOR), 0, 1)
                        .toString());
    }

    @Test
    void aChordWithoutThirdHasTwoNotes() {
        assertEquals(
                "[A3, D4]",
                Voicing.notes(LeftHandSound.chord(D, Third.NONE), 0, 2).toString());
    }

    @Test
    void aSheetThatKeepsItsNotesHasThemInItsOwnKey() {
        assertEquals("[C3]", Voicing.notes(LeftHandSound.bass(D), -2, 0).toString());
    }
}
