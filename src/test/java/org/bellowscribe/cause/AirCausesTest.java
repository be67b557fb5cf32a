package org.bellowscribe.cause;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.Map;
import org.bellowscribe.replay.Played;
import org.bellowscribe.replay.WithoutAir;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.explain.Comparison;
import org.bellowscribe.solver.explain.Explanation;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;

/** The box has bellows of 10 RU.s, of which 1 to 9 may be used. */
class AirCausesTest {

    private static final String THREE = "C4*4 | D4*4 | C4*4";

    private static AirCause only(Played played) {
        List<AirCause> causes = played.decided().airCauses();
        assertEquals(1, causes.size());
        return causes.get(0);
    }

    @Test
    void tuneWithoutPressesHasNoCauses() {
        assertEquals(
                List.of(),
                new Played(TuneText.of("C4 D4"), 5000)
                        .push(1000, 1)
                        .pull(1000, 1)
                        .decided()
                        .airCauses());
    }

    @Test
    void bellowsThatRunOutInTheFirstPlayingAreTheCause() {
        AirCause cause = only(new Played(TuneText.of(THREE, 240), 5000)
                .push(1000, 1)
                .pull(3000, 1)
                .air(AirUse.LIGHT, 2000)
                .push(4500, 1));
        assertEquals(1, cause.event());
        assertEquals(2.0, cause.moved());
        assertEquals(new AirCause.RunsOut(WithoutAir.End.CLOSED, 2, 1, 1), cause.runsOut());
        assertEquals("Without it the bellows would be closed in measure 3.", cause.text());
    }

    @Test
    void playingOfAMeasureThatIsRepeatedIsNamed() {
        Tune tune = TuneText.of("C4*4 | D4*4", 240, List.of(0, 1, 0, 1));
        AirCause cause = only(new Played(tune, 5000).push(3500, 1).pull(3500, 1).air(AirUse.LIGHT, 2500));
        assertEquals("Without it the bellows would be closed in measure 1 of the second playing.", cause.text());
    }

    @Test
    void pressOnThePushKeepsTheBellowsFromOpening() {
        AirCause cause = only(new Played(TuneText.of(THREE, 240), 5000)
                .push(3000, 1)
                .air(AirUse.LIGHT, 2000)
                .pull(5500, 1)
                .push(1000, 1));
        assertEquals(-2.0, cause.moved());
        assertEquals("Without it the bellows would be wide open in measure 2.", cause.text());
    }

    @Test
    void repeatThatComesBackOtherwiseIsTheCause() {
        Tune tune = TuneText.of("C4*4 | D4*4", 240, List.of(0, 1, 0, 1));
        AirCause cause = only(new Played(tune, 5000).push(1000, 1).pull(1000, 1).air(AirUse.LIGHT, 600));
        assertEquals(
                "Without it the repeat would come back 6 % less open; the fourth time the tune is played the bellows would"
                        + " be closed in measure 1.",
                cause.text());
    }

    @Test
    void endThatDoesNotMeetTheStartIsTheCause() {
        AirCause cause = only(new Played(TuneText.of("C4*4 | D4*4", 240), 5000)
                .push(1000, 1)
                .air(AirUse.LIGHT, 30)
                .pull(1000, 1));
        assertNull(cause.runsOut());
        assertEquals("Without it the tune would end a little more open than it began.", cause.text());
    }

    @Test
    void whereTheBellowsWouldLastTheRulesTellWhy() {
        Tune tune = TuneText.of("C4*4 | D4*4", 240);
        Task task = new Task(
                tune,
                Played.BOX,
                List.of(),
                new SolverOptions(MannerLibrary.of("learner"), Times.ONCE, true, 100_000),
                0);
        Solution least = Solver.attempt(task);
        assertNotNull(least);
        Played pressed = new Played(tune, 5000)
                .push(1000, 1)
                .air(AirUse.LIGHT, 300)
                .pull(1000, 1)
                .once()
                .bill(Map.of("air-press", 2), 2, 2);
        AirCause cause = AirCauses.of(task, pressed.solution()).get(0);
        Explanation.Candidate instead = cause.instead();
        assertNotNull(instead);
        assertEquals(Comparison.of(least.cost(), pressed.solution().cost()), instead.comparison());
        assertEquals(
                "Without it the bellows would last, but the tune would cost 8 points more:"
                        + " far button +8 (2 more), bellows reversal +2 (1 more), air press -2.",
                cause.text());
    }
}
