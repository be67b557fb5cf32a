package org.bellowscribe.lefthand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;

/** On the D/G box the push has the chords G, D and B bass, the pull A, E minor and D on other buttons; both have C. */
class LeftHandTallyTest {

    private static LeftHandTally tally(String text) throws DiagnosedException {
        Instrument box = InstrumentLibrary.find("dg-21");
        Tune tune = TuneText.of(text);
        SolverOptions options = new SolverOptions(
                MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.ONCE, true, SolverOptions.USUAL_CELL_LIMIT);
        Outcome outcome = Solver.solve(tune, box, UsualPlan.of(tune, box), options);
        return LeftHandTally.of(
                box, assertInstanceOf(Outcome.Solved.class, outcome).solution());
    }

    @Test
    void chordsOfThePushAreAsWanted() throws DiagnosedException {
        assertEquals(new LeftHandTally(4, 0, 0, 0), tally("[G] G4 B4 D5 G5"));
    }

    @Test
    void soundOfBothDirectionsOnOtherButtonsIsCounted() throws DiagnosedException {
        assertEquals(new LeftHandTally(4, 0, 0, 4), tally("[D] D4 F#4 A4 D5"));
    }

    @Test
    void soundOfBothDirectionsOnOneButtonIsNot() throws DiagnosedException {
        assertEquals(0, tally("[C] G4 G4 G4 G4").onOtherButton());
    }

    /** B minor has its bass on the push and no chord anywhere: the D chord stands in, Bm7 to the ear. */
    @Test
    void chordThatTheBoxLacksHasAStandIn() throws DiagnosedException {
        assertEquals(new LeftHandTally(2, 2, 0, 2), tally("[Bm] D4 F#4 A4 D5"));
    }
}
