package org.bellowscribe.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.bellowscribe.replay.Played;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.AirUse;
import org.junit.jupiter.api.Test;

class OpeningsTest {

    private static final Tune TWICE = TuneText.of("C4*4 | D4*4", 240, List.of(0, 1, 0, 1));

    /** From half open a second's push and pull, the air button giving 2.5 of the 10 RU.s back. */
    private static Openings openings() {
        return Openings.of(new Played(TWICE, 5000)
                .push(3500, 1)
                .pull(3500, 1)
                .air(AirUse.LIGHT, 2500)
                .decided());
    }

    @Test
    void openingsArePercentOfTheCapacity() {
        assertEquals(50, openings().moments().get(0).before(), 1e-9);
        assertEquals(15, openings().moments().get(0).after(), 1e-9);
    }

    @Test
    void whatTheAirButtonGivesIsToldApart() {
        assertEquals(25, openings().moments().get(1).air(), 1e-9);
        assertEquals(0, openings().moments().get(0).air(), 1e-9);
    }

    @Test
    void withoutTheAirButtonEveryPressIsMissing() {
        assertEquals(25, openings().moments().get(1).withoutAfter(), 1e-9);
        assertEquals(-10, openings().moments().get(2).withoutAfter(), 1e-9);
        assertEquals(2, openings().runsOut());
    }

    @Test
    void bellowsThatNeverNeedAirDoNotRunOut() {
        Openings without =
                Openings.of(new Played(TWICE, 5000).push(1000, 1).pull(1000, 1).decided());
        assertFalse(without.usesAir());
        assertEquals(-1, without.runsOut());
    }

    @Test
    void theEndsAreFound() {
        assertEquals(0, openings().mostClosed());
        assertEquals(1, openings().mostOpen());
    }
}
