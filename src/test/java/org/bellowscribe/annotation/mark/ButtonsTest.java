package org.bellowscribe.annotation.mark;

import static org.bellowscribe.instrument.BellowsDirection.PUSH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Sketch;
import org.junit.jupiter.api.Test;

class ButtonsTest {

    @Test
    void everyNoteShowsItsButtonAndThePullStandsInParentheses() {
        assertEquals(
                "3 (3) (4) 4",
                line(new Sketch(1).push("1.3").pull("1.3").pull("1.4").push("1.4")));
    }

    @Test
    void notesStruckTogetherShareOneText() {
        assertEquals("3/5 (4/6/8)", line(new Sketch(1).push("1.3", "1.5").pull("1.4", "1.6", "1.8")));
    }

    @Test
    void onlyTheLessUsedRowHasASign() {
        assertEquals(
                "3 (4) 5′ (6′/7)",
                line(new Sketch(2).push("2.3").pull("2.4").push("1.5").pull("1.6", "2.7")));
    }

    @Test
    void theOtherRowsOfThreeHaveSignsOfTheirOwn() {
        assertEquals(
                "3 4 5′ 6″",
                line(new Sketch(3).push("2.3").push("2.4").push("1.5").push("3.6")));
    }

    @Test
    void rowsUsedAlikeLeaveTheOuterOneBare() {
        assertEquals("3′ 4", line(new Sketch(2).push("2.3").push("1.4")));
    }

    @Test
    void aFourthRowRepeatsTheLastSign() {
        assertEquals(
                "1 1 2′ 3″ 4″″",
                line(new Sketch(4)
                        .push("1.1")
                        .push("1.1")
                        .push("2.2")
                        .push("3.3")
                        .push("4.4")));
    }

    @Test
    void aButtonHeldThroughAReversalIsShown() {
        assertEquals(
                "3 (=3) 4", line(new Sketch(1).push("1.3").pull("1.3").held().push("1.4")));
    }

    @Test
    void ofTwoButtonsOnlyTheOneThatStaysDownIsHeld() {
        Sketch sketch = new Sketch(1).push("1.3", "1.5").pull("1.3", "1.6").held();
        assertEquals("3/5 (=3/6)", line(sketch));
    }

    @Test
    void aHeldButtonIsDownAtEveryNoteThatCanComeBefore() {
        Sketch sketch = new Sketch(1)
                .push("1.3", "1.5")
                .measure()
                .pull("1.3", "1.5")
                .held()
                .measure()
                .push("1.3", "1.6")
                .order(1, 2, 3, 2, 3);
        assertEquals("3/5 (=3/5) 3/6", line(sketch));
    }

    @Test
    void nothingIsHeldAtTheFirstNoteOfATuneThoughARepeatComesBackToIt() {
        Sketch sketch =
                new Sketch(1).pull("1.3").held().measure().push("1.3").held().order(1, 2, 1, 2);
        assertEquals("(3) =3", line(sketch));
    }

    @Test
    void aButtonIsHeldOnlyIfTheBellowsTurnOnEveryWayThere() {
        Sketch sketch = new Sketch(1)
                .push("1.3")
                .measure()
                .pull("1.3")
                .held()
                .measure()
                .pull("1.3")
                .order(1, 2, 3, 2);
        assertEquals("3 (3) (3)", line(sketch));
    }

    @Test
    void aRestShowsNothing() {
        assertEquals("3 4", line(new Sketch(1).push("1.3").rest(PUSH).push("1.4")));
    }

    @Test
    void eachRowCanHaveALineOfItsOwn() {
        Sketch sketch = new Sketch(2).push("1.3").pull("2.4").push("2.2", "1.5");
        Arrangement arrangement = sketch.arrangement(Sketch.style("rows"));
        assertEquals("3 – 5", Texts.line(new Buttons(), arrangement, "row-1"));
        assertEquals("– 4‹ 2", Texts.line(new Buttons(), arrangement, "row-2"));
        assertEquals(List.of("0: outer/inner"), Texts.words(new Buttons(), arrangement));
    }

    @Test
    void aRowThatIsNotUsedHasNoLine() {
        Arrangement arrangement = new Sketch(2).push("2.3").arrangement(Sketch.style("rows"));
        assertEquals("", Texts.line(new Buttons(), arrangement, "row-1"));
        assertEquals("3", Texts.line(new Buttons(), arrangement, "row-2"));
        assertEquals(List.of("0: inner"), Texts.words(new Buttons(), arrangement));
    }

    @Test
    void theLegendOfLinesForRowsNamesThem() {
        Arrangement arrangement = new Sketch(2).push("1.3").pull("2.4").arrangement(Sketch.style("rows"));
        assertEquals(
                List.of(
                        "outer/inner: rows of the lines of numbers, from the top",
                        "3: button 3",
                        "3: pushed",
                        "3‹: pulled"),
                Texts.legend(new Buttons(), arrangement));
    }

    @Test
    void twoLinesShowPushAbovePull() {
        Arrangement arrangement =
                new Sketch(1).push("1.3").pull("1.3").push("1.4").arrangement(Sketch.style("two-lines"));
        assertEquals("3 – 4", Texts.line(new Buttons(), arrangement, "push"));
        assertEquals("– 3 –", Texts.line(new Buttons(), arrangement, "pull"));
    }

    @Test
    void theFirstNoteSaysWhichRowIsBare() {
        assertEquals(
                List.of("1: inner"), words(new Sketch(2).rest(PUSH).push("2.3").push("2.4")));
        assertEquals(List.of("0: outer"), words(new Sketch(2).push("1.3")));
        assertEquals(List.of("0: middle"), words(new Sketch(3).push("2.3")));
        assertEquals(List.of("0: row 2"), words(new Sketch(4).push("2.3")));
    }

    @Test
    void theRowSaidIsThatOfMostOfTheFirstNotesThoughLaterOnesAreElsewhere() {
        Sketch sketch = new Sketch(2).push("2.1").push("1.2");
        for (int i = 0; i < 6; i++) {
            sketch.push("1.3");
        }
        for (int i = 0; i < 20; i++) {
            sketch.push("2.4");
        }
        assertEquals(List.of("0: outer"), words(sketch));
        assertTrue(line(sketch).startsWith("1′ 2 3 3 3 3 3 3 4′ 4′"), line(sketch));
    }

    @Test
    void ofRowsUsedAlikeByTheFirstNotesTheTuneDecides() {
        Sketch sketch = new Sketch(2);
        for (int i = 0; i < 4; i++) {
            sketch.push("1.3").push("2.3");
        }
        assertEquals(List.of("0: inner"), words(sketch.push("2.4")));
    }

    @Test
    void oneRowNeedsNoName() {
        assertEquals(List.of(), words(new Sketch(1).push("1.3")));
    }

    @Test
    void theLegendExplainsTheSignsThatOccur() {
        Sketch sketch = new Sketch(2)
                .push("1.5")
                .pull("1.5")
                .held()
                .pull("2.3")
                .pull("1.5", "2.6")
                .pull("2.7")
                .push("2.7");
        assertEquals(
                List.of(
                        "3: button 3, inner",
                        "5′: button 5, outer",
                        "3: pushed",
                        "(3): pulled",
                        "5′/6: buttons pressed together",
                        "=3: the button stays down while the bellows turn"),
                Texts.legend(new Buttons(), sketch.arrangement()));
    }

    @Test
    void theLegendLeavesOutWhatDoesNotOccur() {
        Sketch sketch = new Sketch(1).push("1.3");
        assertEquals(
                List.of("3: button 3", "3: upper line: pushed"),
                Texts.legend(new Buttons(), sketch.arrangement(Sketch.style("two-lines"))));
    }

    private static String line(Sketch sketch) {
        return Texts.line(new Buttons(), sketch.arrangement(), "buttons");
    }

    private static List<String> words(Sketch sketch) {
        return Texts.words(new Buttons(), sketch.arrangement());
    }
}
