package org.bellowscribe.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.replay.Replay;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.bellowscribe.theory.Pitch;
import org.junit.jupiter.api.Test;

class ReachTest {

    private static final SolverOptions OPTIONS = new SolverOptions(
            MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT);

    private static boolean holds(String... pitches) throws DiagnosedException {
        List<Pitch> notes = Stream.of(pitches).map(Pitch::parse).toList();
        return new Reach(InstrumentLibrary.find("dg-21")).holds(notes);
    }

    @Test
    void twoButtonsOfOneNumberOnTwoRowsAreHeld() throws DiagnosedException {
        assertTrue(holds("E4", "A4"));
    }

    @Test
    void buttonsFartherApartThanTheHandSpansAreNot() throws DiagnosedException {
        assertFalse(holds("A3", "A5"));
    }

    @Test
    void twoButtonsSideBySideAreMarkedAndTheReplayAgrees() throws DiagnosedException {
        Instrument box = InstrumentLibrary.find("dg-21");
        Tune tune = TuneText.of("D4 F#4 E4+A4*2 | D4 F#4 D4*2");
        Outcome outcome = Solver.solve(tune, box, List.of(), OPTIONS);
        Solution solution = ((Outcome.Solved) outcome).solution();
        Step group = solution.steps().get(2);
        assertEquals(
                List.of("1.3", "2.3"), group.buttons().stream().map(Button::id).toList());
        assertEquals(List.of(), Replay.check(tune, box, solution));
    }
}
