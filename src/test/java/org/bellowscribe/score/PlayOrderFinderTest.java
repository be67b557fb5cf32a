package org.bellowscribe.score;

import static org.bellowscribe.score.Signs.order;
import static org.bellowscribe.score.Signs.remarks;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlayOrderFinderTest {

    @Test
    void withoutSignsTheTuneIsPlayedOnce() {
        assertEquals("1-3", order("o o o"));
    }

    @Test
    void anEmptyScoreHasAnEmptyOrder() {
        assertEquals("", PlayOrderFinder.find(List.of()).order().shortForm());
    }

    @Test
    void repeatGoesBackToItsStart() {
        assertEquals("1-3, 2-4", order("o |: o o :| o"));
    }

    @Test
    void repeatWithoutStartGoesBackToTheBeginning() {
        assertEquals("1-2, 1-3", order("o o :| o"));
        assertEquals(List.of(), remarks("o o :| o"));
    }

    @Test
    void secondRepeatWithoutStartGoesBackToTheEndOfTheFirst() {
        assertEquals("1-2, 1-4, 3-4", order("o o :| o o :|"));
        assertEquals(List.of(), remarks("o o :| o o :|"));
    }

    @Test
    void missingStartIsRemarkedWhereOtherStartsAreWritten() {
        assertEquals(
                List.of("The repeat that ends at measure 4 has no start; the player goes back to measure 3,"
                        + " after the repeat before it."),
                remarks("|: o o :| o o :|"));
    }

    @Test
    void timesSayHowOftenASectionSounds() {
        assertEquals("1-2, 1-2, 1-3", order("|: o o :|3 o"));
        assertEquals("1-3", order("|: o o :|1 o"));
    }

    @Test
    void repeatInsideARepeatIsTakenEachTime() {
        assertEquals("1-3, 2-4, 1-3, 2-5", order("|: o |: o o :| o :| o"));
        assertEquals(1, remarks("|: o |: o o :| o :| o").size());
    }

    @Test
    void startThatIsNeverClosedDoesNothing() {
        assertEquals("1-4, 3-4", order("|: o o |: o o :|"));
        assertEquals(
                List.of("The repeat that starts at measure 1 is never closed; it is not repeated."),
                remarks("|: o o |: o o :|"));
    }

    @Test
    void endingsFollowTheirNumbers() {
        assertEquals("1-2, 1, 3-4", order("|: o [1 o ] :| [2 o ] o"));
    }

    @Test
    void threeEndingsMakeThreePasses() {
        assertEquals("1-2, 1, 3, 1, 4", order("|: o [1 o :| [2 o :| [3 o ]"));
    }

    @Test
    void endingWithTwoNumbersIsPlayedTwice() {
        assertEquals("1-2, 1-2, 1, 3", order("|: o [1,2 o :| [3 o ]"));
        assertEquals("1-2, 1, 3, 1-2, 1, 3-4", order("|: o [1,3 o :| [2,4 o :| o"));
    }

    @Test
    void endingsNeedNotBeInOrder() {
        assertEquals("1, 4, 1-3, 1, 4-5", order("|: o [2 o o :| [1,3 o :| o"));
    }

    @Test
    void endingWithoutANumberTakesTheNextFreeOne() {
        assertEquals("1-2, 1, 3", order("|: o [ o :| [ o ]"));
    }

    @Test
    void leavingTheFirstEndingGoesBackEvenWithoutARepeatSign() {
        assertEquals("1-2, 1, 3", order("|: o [1 o ] [2 o ]"));
        assertEquals(1, remarks("|: o [1 o ] [2 o ]").size());
    }

    @Test
    void firstEndingThatStopsTooSoonLastsUntilItsRepeat() {
        assertEquals("1-3, 1, 4", order("|: o [1 o ] o :| [2 o ]"));
    }

    @Test
    void lastEndingThatIsNeverClosedIsAsLongAsTheFirst() {
        assertEquals("1-3, 1, 4-6, 6", order("|: o [1 o o :| [2 o o o :|"));
    }

    @Test
    void repeatAfterTheLastEndingIsNotTakenAgain() {
        assertEquals("1-2, 1, 3-4", order("|: o [1 o :| [2 o :| o"));
        assertEquals(
                List.of("The last ending has a repeat at the end of measure 3; after the last pass the tune goes on."),
                remarks("|: o [1 o :| [2 o :| o"));
    }

    @Test
    void numbersThatAreMissingMakeNoPass() {
        assertEquals("1-2, 1, 3", order("|: o [1 o :| [3 o ]"));
        assertEquals(
                List.of("The endings from measure 2 on have only the numbers [1, 3]; there is one pass for each."),
                remarks("|: o [1 o :| [3 o ]"));
    }

    @Test
    void firstEndingAloneIsLeftOutTheSecondTime() {
        assertEquals("1-2, 1, 3", order("|: o [1 o :| o"));
    }

    @Test
    void bracketWithoutAnyRepeatIsIgnored() {
        assertEquals("1-3", order("o [1 o ] o"));
        assertEquals(1, remarks("o [1 o ] o").size());
    }

    @Test
    void sectionAfterEndingsStartsBehindTheLastEnding() {
        assertEquals("1-2, 1, 3-5, 4-5", order("|: o [1 o :| [2 o ] o o :|"));
    }

    @Test
    void daCapoAlFineStopsAtTheFineAndTakesNoRepeats() {
        assertEquals("1-2, 1-4, 1-2", order("|: o o Fine :| o o D.C._al_Fine"));
    }

    @Test
    void fineIsPassedOverTheFirstTime() {
        assertEquals("1-3, 1", order("o Fine o o D.C."));
    }

    @Test
    void fineWithoutAJumpIsRemarked() {
        assertEquals("1-2", order("o Fine o"));
        assertEquals(List.of("The fine at measure 1 is ignored because no jump leads to it."), remarks("o Fine o"));
    }

    @Test
    void dalSegnoGoesBackToTheSegno() {
        assertEquals("1-4, 2-3", order("o Segno o o Fine o D.S._al_Fine"));
    }

    @Test
    void segnoBesideTheJumpIsItsSignAndNotItsTarget() {
        assertEquals("1-4, 2-3", order("o Segno o o Fine Segno o D.S."));
    }

    @Test
    void dalSegnoWithoutSegnoGoesToTheStart() {
        assertEquals("1-2, 1", order("o Fine o D.S."));
        assertTrue(remarks("o Fine o D.S.").get(0).contains("finds no segno"));
    }

    @Test
    void jumpAlCodaLeavesForTheCodaOnlyAfterTheJump() {
        assertEquals("1-3, 1-2, 4-5", order("o o ToCoda o D.C._al_Coda Coda o o"));
    }

    @Test
    void repeatsInTheCodaAreTaken() {
        assertEquals("1-3, 1, 4, 4", order("o ToCoda o o D.C._al_Coda |: Coda o :|"));
    }

    @Test
    void jumpIsTakenAfterTheRepeatThatEndsThere() {
        assertEquals("1-2, 1-2, 1", order("|: o Fine o :| D.C."));
    }

    @Test
    void afterAJumpTheLastEndingIsPlayed() {
        assertEquals("1-2, 1, 3-4, 1, 3", order("|: o [1 o :| [2 o ] Fine o D.C._al_Fine"));
    }

    @Test
    void repeatsAreTakenAfterAJumpWhereTheScoreSaysSo() {
        List<RoadSigns> signs = List.of(
                RoadSigns.NONE.withRepeatEnd(new RepeatEnd(2, true)).withFine(),
                RoadSigns.NONE.withJump(new Jump(true, "", Jump.Goal.FINE, false)));
        assertEquals("1, 1-2, 1, 1", PlayOrderFinder.find(signs).order().shortForm());
        assertEquals("1, 1-2, 1, 1", order("o Fine :| o D.C._al_Fine_con_rep."));
    }

    @Test
    void daCapoWithoutFinePlaysToTheEndOnceMore() {
        assertEquals("1, 1-2, 1-2", order("o :| o D.C."));
        assertTrue(remarks("o :| o D.C.").get(0).contains("finds no fine"));
    }

    @Test
    void eachOfTwoJumpsIsTakenOnce() {
        assertEquals("1-2, 1-4, 1", order("o Fine o D.C._al_Coda o o D.C._al_Fine"));
    }

    @Test
    void labelsTellSegnosApart() {
        List<RoadSigns> signs = List.of(
                RoadSigns.NONE.withSegno("a").withFine(),
                RoadSigns.NONE.withSegno("b"),
                RoadSigns.NONE.withJump(new Jump(false, "a", Jump.Goal.FINE, false)));
        assertEquals("1-3, 1", PlayOrderFinder.find(signs).order().shortForm());
    }

    @Test
    void jumpInTheFirstEndingIsObeyedBeforeTheSecond() {
        assertEquals("1-3, 1-2, 4", order("Segno o o [1 o ] D.S._al_Fine [2 o ] Fine"));
        assertEquals(List.of(), remarks("Segno o o [1 o ] D.S._al_Fine [2 o ] Fine"));
    }

    @Test
    void repeatsWithoutMeasureAreCutShort() {
        String deep = "|: o ".repeat(8) + ":|99 o ".repeat(8);
        PlayOrderFinder.Found found = PlayOrderFinder.find(Signs.of(deep));
        assertEquals("1-16", found.order().shortForm());
        assertTrue(found.remarks().get(found.remarks().size() - 1).text().contains("more than 5000 measures"));
    }

    @Test
    void aLongScoreWithManyStartsIsReadQuickly() {
        String many = String.join(" ", Collections.nCopies(20_000, "|: o [1 o D.C."));
        assertTrue(PlayOrderFinder.find(Signs.of(many)).order().measures().size() >= 40_000);
    }

    @Test
    void firstEndingThatIsTheWholeRepeatIsPlayedOnce() {
        assertEquals("1-4", order("[1 o o ] :| [2 o o ]"));
        assertEquals("1-5", order("o |: [1 o o :| [2 o o ]"));
        assertEquals("1-4", order("|: [1 o o ] :| o o"));
        assertEquals(List.of(), remarks("[1 o o ] :| [2 o o ]"));
    }
}
