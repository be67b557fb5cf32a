package org.bellowscribe.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Hand;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;

/** Both hands of a concertina play, each in its strap. */
class ConcertinaTest {

    private static Solution solve(Tune tune, Instrument instrument) {
        SolverOptions options = new SolverOptions(
                MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.ONCE, true, SolverOptions.USUAL_CELL_LIMIT);
        return ((Outcome.Solved) Solver.solve(tune, instrument, List.of(), options)).solution();
    }

    private static Instrument anglo(int buttons) throws DiagnosedException {
        return InstrumentLibrary.find("anglo-cg-" + buttons);
    }

    private static List<String> kinds(Tune tune, Instrument instrument, Solution solution) {
        return Replay.check(tune, instrument, solution).stream()
                .map(violation -> "[" + violation.limit() + "] " + violation.text())
                .toList();
    }

    /** Returns a solution with other fingers at its first step. */
    private static Solution changed(Solution solution, int handOn, Integer... fingers) {
        Step step = solution.steps().get(0);
        List<Step> steps = new ArrayList<>(solution.steps());
        steps.set(
                0,
                new Step(
                        step.event(),
                        step.direction(),
                        step.buttons(),
                        List.of(fingers),
                        handOn,
                        step.held(),
                        step.leftHand(),
                        step.air(),
                        step.openingBefore(),
                        step.openingAfter(),
                        step.airTaken()));
        return new Solution(steps, solution.again(), solution.cost(), List.of());
    }

    /** John Kirkpatrick, "How to Play the Anglo" 1 (1972): 1, 3, 4, 5 and 6 to 9 pushed are the chord of the row. */
    @Test
    void publishedChordOfTheRowIsSplitOverBothHands() throws DiagnosedException {
        Tune tune = TuneText.of("C3+C4+E4+G4+C5+E5+G5+C6");
        Solution solution = solve(tune, anglo(20));
        Step step = solution.steps().get(0);
        assertEquals(
                List.of("1.1", "1.3", "1.4", "1.5", "1.6", "1.7", "1.8", "1.9"),
                step.buttons().stream().map(button -> button.id()).toList());
        assertEquals(List.of(4, 3, 2, 1, 1, 2, 3, 4), step.fingers());
        assertEquals(
                4,
                step.buttons().stream()
                        .filter(button -> button.hand() == Hand.LEFT)
                        .count());
        assertEquals(List.of(), kinds(tune, anglo(20), solution));
    }

    @Test
    void outermostPairOfAHandTakesLittleAndRingFinger() throws DiagnosedException {
        Tune tune = TuneText.of("C3+G3");
        Solution solution = solve(tune, anglo(20));
        assertEquals(List.of(4, 3), solution.steps().get(0).fingers());
        assertEquals(List.of(), kinds(tune, anglo(20), solution));
    }

    @Test
    void handsStayInTheirStrapsThroughTheWholeRange() throws DiagnosedException {
        Tune tune = TuneText.of("C3 E4 C5 B6 G4 D5 E6 C3");
        Solution solution = solve(tune, anglo(30));
        assertEquals(
                List.of(1),
                solution.steps().stream().map(Step::handOn).distinct().toList());
        assertEquals(List.of(), kinds(tune, anglo(30), solution));
    }

    @Test
    void replayFindsAFingerOutOfReach() throws DiagnosedException {
        Tune tune = TuneText.of("C3+G3");
        Solution solution = changed(solve(tune, anglo(20)), 1, 4, 1);
        assertEquals(
                List.of("[strapped-hands] Finger 1 of the left hand does not reach button 1.2."),
                kinds(tune, anglo(20), solution));
    }

    @Test
    void replayFindsAFingerOnTwoButtons() throws DiagnosedException {
        Tune tune = TuneText.of("C3+G3");
        Solution solution = changed(solve(tune, anglo(20)), 1, 4, 4);
        assertEquals(
                List.of("[one-finger-each] Finger 4 of the left hand holds two buttons."),
                kinds(tune, anglo(20), solution));
    }

    @Test
    void replayFindsAHandThatHasMoved() throws DiagnosedException {
        Tune tune = TuneText.of("C3+G3");
        Solution solution = changed(solve(tune, anglo(20)), 2, 4, 3);
        assertEquals(List.of("[strapped-hands] Strapped hands have moved to 2."), kinds(tune, anglo(20), solution));
    }
}
