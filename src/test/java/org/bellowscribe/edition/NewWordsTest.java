package org.bellowscribe.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bellowscribe.annotation.Sketch;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.syllabus.Thing;
import org.bellowscribe.syllabus.Thing.Kind;
import org.junit.jupiter.api.Test;

class NewWordsTest {

    private static final Style STYLE = Sketch.style(StyleLibrary.DEFAULT_ID);

    private static final Instrument TWO_ROWS =
            InstrumentLibrary.library().of("dg-21").instrument();
    private static final Instrument ONE_ROW =
            InstrumentLibrary.library().of("d-10").instrument();

    private static SortedSet<Thing> things(Thing... things) {
        return new TreeSet<>(List.of(things));
    }

    private static Thing button(int row, int number) {
        return new Thing(Kind.BUTTON, row, number, "push");
    }

    @Test
    void buttonsAreNamedRowByRow() {
        assertEquals(
                "buttons outer 3 push, 4 push, inner 5 push",
                NewWords.all(things(button(2, 5), button(1, 4), button(1, 3)), STYLE, TWO_ROWS));
    }

    @Test
    void aBoxOfOneRowNeedsNoNamesOfRows() {
        assertEquals("button 3 push", NewWords.all(things(button(1, 3)), STYLE, ONE_ROW));
    }

    @Test
    void kindsStandInTheirOrder() {
        assertEquals(
                "row change outer to inner; place of the hand 5; key G major",
                NewWords.all(
                        things(
                                new Thing(Kind.KEY, 1, 0, "G"),
                                new Thing(Kind.HAND_PLACE, 0, 5, ""),
                                new Thing(Kind.ROW_CHANGE, 1, 2, "")),
                        STYLE,
                        TWO_ROWS));
    }

    @Test
    void nothingNewIsNoLine() {
        assertEquals(List.of(), NewWords.lines(things(), STYLE, TWO_ROWS));
    }

    @Test
    void whatTakesTooMuchRoomIsCounted() {
        SortedSet<Thing> many = new TreeSet<>();
        for (int number = 1; number <= 11; number++) {
            many.add(button(1, number));
            many.add(new Thing(Kind.BUTTON, 1, number, "pull"));
            many.add(new Thing(Kind.RHYTHM, 0, 0, number + "/32 of a quarter + eighth"));
        }
        many.add(new Thing(Kind.KEY, 1, 0, "G"));
        List<String> lines = NewWords.lines(many, STYLE, TWO_ROWS);
        assertEquals(List.of("New: 22 buttons; key G major; 11 rhythms"), lines);
    }

    @Test
    void linesAreShortAndFew() {
        SortedSet<Thing> some = new TreeSet<>();
        for (int number = 1; number <= 11; number++) {
            some.add(button(1, number));
        }
        List<String> lines = NewWords.lines(some, STYLE, TWO_ROWS);
        assertTrue(
                lines.size() <= 3 && lines.stream().allMatch(line -> line.length() <= NewWords.LINE), lines.toString());
    }

    @Test
    void everythingIsNamedInTheLanguageOfTheStyle() {
        SortedSet<Thing> things = things(
                new Thing(Kind.BASS, 1, 2, "B pull"),
                new Thing(Kind.REVERSAL, 0, 0, "on one button"),
                new Thing(Kind.KEY, -2, 0, "Bb"),
                new Thing(Kind.RHYTHM, 0, 0, "dotted quarter + eighth rest"));
        assertEquals(
                "Bass H Zug; Wechsel auf einem Knopf; Tonart B-Dur; Rhythmus punktierte Viertel + Achtel Pause",
                NewWords.all(things, Sketch.style("german"), TWO_ROWS));
    }
}
