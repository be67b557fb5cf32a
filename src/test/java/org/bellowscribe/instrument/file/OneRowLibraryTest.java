package org.bellowscribe.instrument.file;

import static org.bellowscribe.instrument.file.PublishedLayouts.assertButtons;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** One-row instruments against published tables. */
class OneRowLibraryTest {

    /** S7: "Big Nick", Cajun lessons; S8: Cajun accordion discussion board. */
    @Test
    void cRowHasTheFifthOnButtonOnePull() {
        assertButtons("one-row C ten button, Cajun / pull 5th", "c-10");
    }

    /** S8: Cajun accordion discussion board, message 608393, a one-row in D. */
    @Test
    void dRowIsTheCRowTwoSemitonesUp() {
        assertButtons("one-row D ten button, Cajun / pull 5th", "d-10");
    }

    /** Transposed from S7 and S8. */
    @Test
    void gRowIsTheCRowFiveSemitonesDown() {
        assertButtons("one-row G ten button, Cajun / pull 5th", "g-10");
    }

    /** S7: the scale of C on a one-row: 3 3' 4 4' 5 5' 6' 6, where ' is the pull. */
    @Test
    void scaleOfCLiesOnButtonsThreeToSix() {
        assertEquals(
                "C4 D4 E4 F4 G4 A4 B4 C5",
                InstrumentLines.sounds(InstrumentLines.find("c-10"), "1.3 1.3' 1.4 1.4' 1.5 1.5' 1.6' 1.6"));
    }

    /** S7; also S36: Grove entry "Melodeon" (Graeme Smith): tonic on the push, dominant on the pull. */
    @Test
    void spoonsSoundTonicAndDominant() {
        assertEquals(List.of("1.1 d a", "1.2 D A"), InstrumentLines.leftHand(InstrumentLines.find("d-10")));
    }

    /** From memory: four stops, low, two middle, high. */
    @Test
    void fourStopsSound() {
        assertEquals(List.of(-1, 0, 0, 1), InstrumentLines.find("g-10").air().voices());
    }
}
