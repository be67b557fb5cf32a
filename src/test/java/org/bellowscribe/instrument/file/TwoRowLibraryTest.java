package org.bellowscribe.instrument.file;

import static org.bellowscribe.instrument.file.PublishedLayouts.assertButtons;
import static org.bellowscribe.instrument.file.PublishedLayouts.assertLeftHand;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Two rows a fourth apart against published tables. */
class TwoRowLibraryTest {

    /** S1: Tom Scarff, "Melodeon Key to MIDI Note Number Chart" (G/D, 21+8), an octave up for the reasons S2, S3 give. */
    @Test
    void dgLowNotesHaveTheFifthOnButtonOnePull() {
        assertButtons("D/G 21 low notes, 1st button pull = 5th", "dg-21");
    }

    /** S6: a two-row C/F table in public firmware, moved to D/G; the middle octave also S9: Han Speek, 1996. */
    @Test
    void dgAccidentalsStandOnButtonsOne() {
        assertButtons("D/G 21 accidentals on buttons 1", "dg-21-accidentals");
    }

    /** Composed of S3: Rod Stradling; S14: Kozulich; and S6. */
    @Test
    void dgWithTwentyThreeButtonsStartsOnTheFourth() {
        assertButtons("D/G 23 fourth-button start, accidentals + low notes, low pull = 5th", "dg-23");
    }

    /** S1 (order of its eight keys) and S4: Bill Farmer, sound emulators. */
    @Test
    void dgHasTheEightBassesOfTheTrade() {
        assertLeftHand("D/G 8 bass", "dg-21");
    }

    /** S2: organetto.it (ed. I. Salvi), "Le tastiere dell'organetto a otto bassi". */
    @Test
    void gcHasTheEightBassesMovedByAFifth() {
        assertLeftHand("G/C 8 bass", "gc-21");
    }

    /** S2: on a G/C, push 6 of the G row is G4 and push 3 of the C row is middle C. */
    @Test
    void gcRowsMeetAroundMiddleC() {
        assertEquals("G4 C4", InstrumentLines.sounds(InstrumentLines.find("gc-21"), "1.6 2.3"));
    }

    /** S3: Rod Stradling: the G row of a D/G lies an octave above the G row of a G/C. */
    @Test
    void gRowOfDgLiesAnOctaveAboveThatOfGc() {
        assertEquals("G4", InstrumentLines.sounds(InstrumentLines.find("dg-21"), "2.3"));
        assertEquals("G3", InstrumentLines.sounds(InstrumentLines.find("gc-21"), "1.3"));
    }

    /** S18: "Bellows and Strings" blog, 2010: the scale of G along the G row of a D/G. */
    @Test
    void scaleOfGLiesOnTheGRow() {
        assertEquals(
                "G4 A4 B4 C5 D5 E5 F#5 G5",
                InstrumentLines.sounds(InstrumentLines.find("dg-21"), "2.3 2.3' 2.4 2.4' 2.5 2.5' 2.6' 2.6"));
    }
}
