package org.bellowscribe.difficulty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.decision.Steered;
import org.bellowscribe.difficulty.grading.Term;
import org.bellowscribe.replay.Played;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;

/**
 * Figures of tunes whose marks are written by hand, on a box with one row; a quarter lasts a quarter of a second. Nearly every
 * note lies one way only on it, so the easiest way has the buttons and directions that are written.
 */
class DifficultyTest {

    private static final double EXACT = 1e-9;

    private static double figure(Term term, Tune tune, Played played) {
        SolverOptions options = new SolverOptions(MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, 1);
        Task task = new Task(tune, Played.BOX, List.of(), options, 0);
        DecidedTune decided = new DecidedTune(task, tune, tune, false, played.solution(), Steered.NOT);
        return Difficulty.of(decided).terms().stream()
                .filter(each -> each.term() == term)
                .findFirst()
                .orElseThrow()
                .figure();
    }

    private static Tune tune(String text) {
        return TuneText.of(text, 240);
    }

    @Test
    void notesStruckInEightSecondsAreCountedASecond() {
        Tune tune = tune("C4 E4 r G4");
        assertEquals(
                3 / 8.0,
                figure(
                        Term.NOTES,
                        tune,
                        new Played(tune, 9).push(1, 1).push(1, 2).push(1).push(1, 3)),
                EXACT);
    }

    @Test
    void pulledNotesAreOffThePush() {
        Tune tune = tune("C4 D4 E4 F4");
        Played played = new Played(tune, 9).push(1, 1).pull(1, 1).push(1, 2).pull(1, 2);
        assertEquals(2, figure(Term.OFF_PUSH, tune, played), EXACT);
    }

    @Test
    void aNoteOnOneButtonInOneDirectionLiesOneWayOnly() {
        // On this box D5 is pulled on button 5 alone, and G5 is pushed on button 6 alone.
        Tune tune = tune("C4 D5 G5 r");
        assertEquals(
                3,
                figure(
                        Term.ONE_WAY,
                        tune,
                        new Played(tune, 9).push(1, 1).pull(1, 5).push(1, 6).push(1)),
                EXACT);
    }

    @Test
    void aReversalToAnotherButtonCountsBySpeed() {
        Tune tune = tune("C4 F4*2 G4 r");
        Played played = new Played(tune, 9).push(1, 1).pull(1, 2).push(1, 3).push(1);
        assertEquals((1 + 0.25) / 8, figure(Term.REVERSALS, tune, played), EXACT);
        assertEquals(0, figure(Term.HELD_REVERSALS, tune, played), EXACT);
    }

    @Test
    void aReversalOnOneButtonIsHeld() {
        Tune tune = tune("C4 D4 r r");
        Played played = new Played(tune, 9).push(1, 1).pull(1, 1).push(1).push(1);
        assertEquals(1 / 8.0, figure(Term.HELD_REVERSALS, tune, played), EXACT);
        assertEquals(0, figure(Term.REVERSALS, tune, played), EXACT);
    }

    @Test
    void aTurnInsideARunCountsByTheSlowestStepAroundIt() {
        Tune tune = tune("C4 E4 F4 D4");
        Played played = new Played(tune, 9).push(1, 1).push(1, 2).pull(1, 2).pull(1, 1);
        assertEquals(1 / 8.0, figure(Term.QUICK_TURNS, tune, played), EXACT);
        Tune slow = tune("C4 E4 F4*2 D4");
        Played slower = new Played(slow, 9).push(1, 1).push(1, 2).pull(1, 2).pull(1, 1);
        assertEquals(0.25 / 8, figure(Term.QUICK_TURNS, slow, slower), EXACT);
    }

    @Test
    void aMoveOfTheHandThatNoPlaceSparesAndALeapCount() {
        Tune tune = tune("C4 G5 r r");
        Played played =
                new Played(tune, 9).push(1, 1).push(1, 6).hand(4).push(1).push(1);
        assertEquals(1 / 8.0, figure(Term.SHIFTS, tune, played), EXACT);
        assertEquals(1 / 8.0, figure(Term.LEAPS, tune, played), EXACT);
    }

    @Test
    void aMoveThatAnotherPlaceOfTheHandSparesIsNone() {
        Tune tune = tune("C4 C5 r r");
        Played played =
                new Played(tune, 9).push(1, 1).push(1, 4).hand(4).push(1).push(1);
        assertEquals(0, figure(Term.SHIFTS, tune, played), EXACT);
    }

    @Test
    void aFingerStretchesWhereMovingThereAndBackIsWorse() {
        Tune tune = tune("C4*1/2 E5*1/2 C4*1/2 r*5/2");
        Played played = new Played(tune, 9).push(1, 1).push(1, 5).push(1, 1).push(1);
        assertEquals(1 / 8.0, figure(Term.STRETCHES, tune, played), EXACT);
        assertEquals(0, figure(Term.SHIFTS, tune, played), EXACT);
    }

    @Test
    void rangeBeginsBeyondAnOctave() {
        Tune octave = tune("C4 C5 r r");
        assertEquals(
                0,
                figure(
                        Term.RANGE,
                        octave,
                        new Played(octave, 9).push(1, 1).push(1, 4).push(1).push(1)),
                EXACT);
        Tune tenth = tune("C4 E5 r r");
        assertEquals(
                4,
                figure(
                        Term.RANGE,
                        tenth,
                        new Played(tenth, 9).push(1, 1).push(1, 5).push(1).push(1)),
                EXACT);
    }

    @Test
    void aBassBetweenTwoNotesCountsByTheNearerOfThem() {
        Tune tune = tune("C4*2 E4 r");
        Played played = new Played(tune, 9).push(1, 1).bass("1", "1").push(1, 2).push(1);
        assertEquals(1 / 8.0, figure(Term.LEFT_HAND_BETWEEN, tune, played), EXACT);
        Played together =
                new Played(tune, 9).push(1, 1).bass("0", "1").push(1, 2).push(1);
        assertEquals(0, figure(Term.LEFT_HAND_BETWEEN, tune, together), EXACT);
    }

    @Test
    void aBassOnAnotherButtonThanLastTimeIsATwin() {
        Tune tune = tune("C4 C4 C4 r");
        Played played = new Played(tune, 9)
                .push(1, 1)
                .bass("0", "1")
                .push(1, 1)
                .left("0", "1", Played.FAR_BASS, Played.FAR_BASS.push())
                .push(1, 1)
                .left("0", "1", Played.FAR_BASS, Played.FAR_BASS.push())
                .push(1);
        assertEquals(1 / 8.0, figure(Term.TWIN_BASSES, tune, played), EXACT);
    }

    @Test
    void airOnAShortNoteCountsMore() {
        Tune tune = tune("C4 E4*4 r r");
        Played played = new Played(tune, 9)
                .push(1, 1)
                .air(AirUse.FULL, 1)
                .push(1, 2)
                .push(1)
                .push(1);
        assertEquals(60 * 2 / 8.0, figure(Term.AIR, tune, played), EXACT);
        Played later = new Played(tune, 9)
                .push(1, 1)
                .push(1, 2)
                .air(AirUse.LIGHT, 1)
                .push(1)
                .push(1);
        assertEquals(60 * 0.5 / 8, figure(Term.AIR, tune, later), EXACT);
    }

    @Test
    void aRestOrALongNoteEndsARun() {
        Tune tune = tune("C4 E4*3 G4 E4 r C4");
        Played played = new Played(tune, 9)
                .push(1, 1)
                .push(1, 2)
                .push(1, 3)
                .push(1, 2)
                .push(1)
                .push(1, 1);
        assertEquals(2, figure(Term.RUN, tune, played), EXACT);
    }
}
