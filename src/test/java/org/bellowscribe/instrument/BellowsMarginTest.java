package org.bellowscribe.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.junit.jupiter.api.Test;

/** The bellows of dg-21 hold 40 RU.s, of which 8 percent at either end stay unused; the air button passes 7 and 20 RU. */
class BellowsMarginTest {

    private final Instrument box;

    BellowsMarginTest() throws DiagnosedException {
        box = InstrumentLibrary.find("dg-21");
    }

    @Test
    void marginMakesTheAirLastAsMuchShorter() {
        Bellows bellows = BellowsMargin.on(box, 25).bellows();
        assertEquals(32, bellows.capacity(), 1e-9);
        assertEquals(5.6, bellows.lightAirFlow(), 1e-9);
        assertEquals(16, bellows.fullAirFlow(), 1e-9);
    }

    @Test
    void marginLeavesAsMuchOfTheStrokeUnused() {
        Bellows bellows = BellowsMargin.on(box, 20).bellows();
        assertEquals(0.18, bellows.reserve(), 1e-9);
        assertEquals(0.64, (bellows.highest() - bellows.lowest()) / bellows.capacity(), 1e-9);
    }

    @Test
    void widestMarginLeavesSomethingToPlayWith() {
        Bellows bellows = BellowsMargin.on(box, 50).bellows();
        assertEquals(0.33, bellows.reserve(), 1e-9);
    }

    @Test
    void noMarginChangesNothingAndTooMuchIsRefused() {
        assertSame(box, BellowsMargin.on(box, 0));
        assertThrows(IllegalArgumentException.class, () -> BellowsMargin.on(box, 51));
        assertThrows(IllegalArgumentException.class, () -> BellowsMargin.on(box, -1));
    }
}
