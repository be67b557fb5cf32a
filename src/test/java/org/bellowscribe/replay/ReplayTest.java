package org.bellowscribe.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

/** Each limit is broken once. At 60 quarters a minute a quarter on one reed takes 1000 thousandths of a RU.s. */
class ReplayTest {

    private static final Tune TWO_NOTES = TuneText.of("C4 D4", 60);

    private static Played twoNotes() {
        return new Played(TWO_NOTES, 5000);
    }

    private static void assertFound(Played played, String... violations) {
        assertEquals(List.of(violations), played.violations());
    }

    @Test
    void cleanSolutionBreaksNothing() {
        assertFound(twoNotes().push(1000, 1).pull(1000, 1).held());
    }

    @Test
    void stepsMustBeThoseOfTheTune() {
        assertFound(twoNotes().push(1000, 1), "[one-step-each] The 1 steps are not those of the 2 events of the tune.");
    }

    @Test
    void buttonMustSoundThePitchInTheDirection() {
        assertFound(
                twoNotes().push(1000, 1).push(1000, 1).once(),
                "measure 1, part P1: [pitch-on-button] Button 1.1 does not sound D4 on the push.");
    }

    @Test
    void buttonMustBeOnTheInstrument() {
        Tune tune = TuneText.of("C4", 60);
        assertFound(
                new Played(tune, 5000).push(1000, 9).hand(6).once(),
                "measure 1, part P1: [pitch-on-button] Button 1.9 does not sound C4 on the push.");
    }

    @Test
    void everyPitchNeedsAButton() {
        assertFound(
                twoNotes().push(1000, 1).pull(1000).once(),
                "measure 1, part P1: [button-each] 1 pitches have 0 buttons and 0 fingers.");
    }

    @Test
    void handMustBeOnAButton() {
        assertFound(
                twoNotes().push(1000, 1).pull(1000, 1).hand(0).fingers(2),
                "measure 1, part P1: [hand-reach] The hand is on button 0.");
    }

    @Test
    void fingersOfAGroupMustDiffer() {
        Tune tune = TuneText.of("C4+E4", 60);
        assertFound(
                new Played(tune, 5000).push(2000, 1, 2).hand(2).fingers(1, 1).once(),
                "measure 1, part P1: [one-finger-each] Finger 1 holds buttons 1.1 and 1.2, which do not lie side by side.");
    }

    @Test
    void middleFingerReachesOnlyItsOwnButton() {
        assertFound(
                twoNotes().push(1000, 1).fingers(2).pull(1000, 1),
                "measure 1, part P1: [hand-reach] Finger 2 does not reach button 1.1 with the hand on button 1.");
    }

    @Test
    void indexFingerReachesOneButtonDownAndNoFurther() {
        assertFound(twoNotes().push(1000, 1).hand(2).fingers(1).pull(1000, 1));
        assertFound(
                twoNotes().push(1000, 1).hand(3).fingers(1).pull(1000, 1),
                "measure 1, part P1: [hand-reach] Finger 1 does not reach button 1.1 with the hand on button 3.");
    }

    @Test
    void littleFingerReachesOneButtonUpAndNoFurther() {
        Tune tune = TuneText.of("E5 G5", 60);
        assertFound(
                new Played(tune, 5000).push(1000, 5).push(1000, 6).once(),
                "measure 1, part P1: [hand-reach] Finger 4 does not reach button 1.6 with the hand on button 1.");
    }

    @Test
    void thumbPlaysNoButton() {
        assertFound(
                twoNotes().push(1000, 1).hand(1).fingers(0).pull(1000, 1),
                "measure 1, part P1: [hand-reach] Finger 0 does not reach button 1.1 with the hand on button 1.");
    }

    @Test
    void leftHandMustSoundInTheDirection() {
        LeftHandSound g = LeftHandSound.bass(PitchClass.parse("G"));
        assertFound(
                twoNotes()
                        .push(3000, 1)
                        .left("0", "1", Played.BASS, g)
                        .pull(1000, 1)
                        .once(),
                "measure 1, part P1: [sound-on-button] Left-hand button 1.1 does not sound G on the push.");
    }

    @Test
    void leftHandSoundNeedsAButton() {
        LeftHandSound c = LeftHandSound.bass(PitchClass.parse("C"));
        assertFound(
                twoNotes().push(3000, 1).left("0", "1", null, c).pull(1000, 1).once(),
                "measure 1, part P1: [sound-on-button] A left-hand sound comes from no button.");
    }

    @Test
    void leftHandReachesWhatSoundsTogether() {
        LeftHandSound c = LeftHandSound.bass(PitchClass.parse("C"));
        assertFound(
                twoNotes()
                        .push(3000, 1)
                        .left("0", "1/2", Played.BASS, c)
                        .left("0", "1/2", Played.FAR_BASS, c)
                        .pull(1000, 1)
                        .once(),
                "measure 1, part P1: [left-hand-reach] No hand holds left-hand buttons 1.1 and 1.6 together.");
    }

    @Test
    void leftHandMayWalkFartherThanItReaches() {
        LeftHandSound c = LeftHandSound.bass(PitchClass.parse("C"));
        assertFound(twoNotes()
                .push(3000, 1)
                .left("0", "1/2", Played.BASS, c)
                .left("1/2", "1/2", Played.FAR_BASS, c)
                .pull(1000, 1)
                .once());
    }

    @Test
    void leftHandMustEndWithItsEvent() {
        assertFound(
                twoNotes().push(3000, 1).bass("1/2", "1").pull(1000, 1).once(),
                "measure 1, part P1: [left-hand-ends] A left-hand sound lasts from 1/2 to 3/2 quarters into a note of"
                        + " 1/1, and could sound through a reversal.");
    }

    @Test
    void silentLeftHandTakesNoAir() {
        assertFound(twoNotes().push(1000, 1).left("0", "1", null, null).pull(1000, 1));
    }

    @Test
    void pushMustCloseTheBellows() {
        assertFound(
                twoNotes().push(-1000, 1).pull(1000, 1).once(),
                "measure 1, part P1: [right-way] On the push the bellows go from 5000 to 6000 thousandths.");
    }

    @Test
    void loudnessMovesTheAirByFivePercentAndNoMore() {
        assertFound(twoNotes().push(950, 1).pull(950, 1));
        assertFound(twoNotes().push(1050, 1).pull(1050, 1));
        assertFound(
                twoNotes().push(949, 1).pull(1051, 1).once(),
                "measure 1, part P1: [air-of-reeds] The reeds take 949 thousandths where 950 to 1050 are right.",
                "measure 1, part P1: [air-of-reeds] The reeds take 1051 thousandths where 950 to 1050 are right.");
    }

    @Test
    void leftHandTakesAirForItsOwnTime() {
        assertFound(twoNotes().push(2000, 1).bass("0", "1/2").pull(2000, 1).bass("0", "1/2"));
    }

    @Test
    void airButtonPassesAtMostItsFlow() {
        assertFound(
                twoNotes().push(4000, 1).air(AirUse.LIGHT, 3000).pull(4000, 1).air(AirUse.FULL, 3000));
        assertFound(
                twoNotes()
                        .jumpTo(6000)
                        .push(4001, 1)
                        .air(AirUse.LIGHT, 3001)
                        .pull(1000, 1)
                        .once(),
                "measure 1, part P1: [air-button] The air button (light) passes 3001 thousandths where 0 to 3000.0 can"
                        + " pass.");
    }

    @Test
    void noAirPassesWithoutTheButton() {
        assertFound(
                twoNotes().push(1500, 1).air(AirUse.NONE, 500).pull(1000, 1).once(),
                "measure 1, part P1: [air-button] The air button (none) passes 500 thousandths where 0 to 0.0 can pass.");
    }

    @Test
    void restWithoutAirMovesNothing() {
        Tune tune = TuneText.of("r", 60);
        assertFound(new Played(tune, 5000).push(0));
        assertFound(new Played(tune, 5000).push(8).air(AirUse.FULL, 8).once());
        assertFound(
                new Played(tune, 5000).push(1).once(),
                "measure 1, part P1: [air-of-reeds] The reeds take 1 thousandths where 0 to 0 are right.");
    }

    @Test
    void openingMustGoOnUnbroken() {
        assertFound(
                twoNotes().push(1000, 1).jumpTo(4001).pull(999, 1),
                "measure 1, part P1: [opening-chain] The opening is 4001 thousandths, but coming from measure 1 it is"
                        + " 4000.");
    }

    @Test
    void everyPassMustBeginWithTheSameOpening() {
        Tune tune = TuneText.of("C4 | D4", 60, List.of(0, 0, 1));
        assertFound(
                new Played(tune, 5000).push(1000, 1).pull(1000, 1).once(),
                "measure 1, part P1: [opening-chain] The opening is 5000 thousandths, but coming from measure 1 it is"
                        + " 4000.");
    }

    @Test
    void openingMustStayWithinTheBellows() {
        assertFound(twoNotes().jumpTo(2000).push(1000, 1).pull(1000, 1));
        assertFound(
                twoNotes().jumpTo(1999).push(1000, 1).pull(1000, 1),
                "measure 1, part P1: [bellows-range] The opening is 999 thousandths; it must be from 1000.0 to 9000.0.");
    }

    @Test
    void playedAgainTheEndMustBeTheStart() {
        assertFound(
                twoNotes().push(1000, 1).pull(1001, 1),
                "[play-again] The bellows end at 5001 and began at 5000 thousandths; they may differ by 0.");
        assertFound(twoNotes().push(1000, 1).pull(1001, 1).once());
    }

    @Test
    void heldButtonMustBeTheSameOnEveryPass() {
        Tune tune = TuneText.of("E4 C4 | D4", 60, List.of(0, 1, 1));
        assertFound(
                new Played(tune, 5000)
                        .push(1000, 2)
                        .push(1000, 1)
                        .pull(0, 1)
                        .held()
                        .once(),
                "measure 2, part P1: [air-of-reeds] The reeds take 0 thousandths where 950 to 1050 are right.",
                "measure 2, part P1: [held] No button of [1.1] stays down through a reversal on every pass.");
    }

    @Test
    void firstNoteIsNotHeldFromAnywhere() {
        assertFound(
                twoNotes().push(1000, 1).held().pull(1000, 1),
                "measure 1, part P1: [held] No button of [1.1] stays down through a reversal on every pass.");
    }

    @Test
    void billMustAddUp() {
        assertFound(
                twoNotes().push(1000, 1).pull(1000, 1).bill(Map.of("a", 1, "b", 1), 3, 3),
                "[bill] The points of the rules add up to 2, not to 3.");
        assertFound(
                twoNotes().push(1000, 1).pull(1000, 1).bill(Map.of("a", 3), 3, 4),
                "[bill] The marks cost 3 points, less than the proved least 4.");
    }

    @Test
    void performanceCountsPassesAndAddsUp() {
        Tune tune = TuneText.of("C4 | D4", 60, List.of(0, 1, 0, 1));
        Solution solution = new Played(tune, 5000)
                .push(1500, 1)
                .air(AirUse.LIGHT, 460)
                .pull(1500, 1)
                .air(AirUse.LIGHT, 500)
                .solution();
        List<Sounding> soundings = Performance.of(tune, Played.BOX, solution);
        assertEquals(new Sounding(0, 1, 1, 1.04, 1, 0.46, 5, 3.5), soundings.get(0));
        assertEquals(new Sounding(1, 2, 1, 1, 1, 0.5, 3.5, 5), soundings.get(3));
    }
}
