package org.bellowscribe.annotation;

import static org.bellowscribe.instrument.BellowsDirection.PULL;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.solver.AirUse;
import org.junit.jupiter.api.Test;

class AnnotatorsTest {

    @Test
    void marksStandInTheOrderOfTheFile() throws DiagnosedException {
        Sketch sketch = new Sketch(1)
                .push("1.3", "1.5")
                .fingers(1, 3)
                .bass("G")
                .pull("1.4")
                .fingers(2);
        assertEquals(
                List.of(
                        new Annotation.Words(0, true, "push"),
                        new Annotation.Syllable(0, 0, "buttons", "3/5"),
                        new Annotation.Syllable(0, 1, "left-hand", "G"),
                        new Annotation.Finger(0, 1),
                        new Annotation.Finger(1, 3),
                        new Annotation.Syllable(2, 0, "buttons", "(4)"),
                        new Annotation.Finger(2, 2)),
                annotate(sketch, "fingers", "left-hand", "buttons", "direction"));
    }

    @Test
    void theOrderOfTheIdsDoesNotMatter() throws DiagnosedException {
        Sketch sketch = new Sketch(2).push("2.3").bass("G").pull("2.3").air(AirUse.FULL);
        assertEquals(
                annotate(sketch, "buttons", "left-hand", "air", "hand"),
                annotate(sketch, "hand", "air", "left-hand", "buttons"));
    }

    @Test
    void aStyleOrdersTheLines() throws DiagnosedException {
        Style willow = StyleLibrary.find("samples/styles/willow-lane.xml");
        Sketch sketch = new Sketch(1).pull("1.3").bass("G");
        assertEquals(
                List.of(
                        new Annotation.Words(0, true, "Zug"),
                        new Annotation.Syllable(0, 0, "left-hand", "G"),
                        new Annotation.Syllable(0, 1, "buttons", "[3]")),
                Annotators.annotate(sketch.arrangement(willow), List.of("direction", "buttons", "left-hand")));
    }

    @Test
    void withoutIdsNothingIsWritten() throws DiagnosedException {
        assertEquals(List.of(), annotate(new Sketch(1).push("1.3")));
    }

    @Test
    void wordsAtOneNoteAreOneText() throws DiagnosedException {
        Sketch sketch = new Sketch(2).push("2.3").open(4000);
        assertEquals(
                List.of(new Annotation.Words(0, true, "push, open 1/3")), annotate(sketch, "opening", "direction"));
    }

    @Test
    void theDirectionIsSaidOnceTogetherWithAir() throws DiagnosedException {
        Sketch sketch =
                new Sketch(1).push("1.3").measure().pull("1.4").air(AirUse.FULL).order(1, 2, 2);
        assertEquals(
                List.of(new Annotation.Words(0, true, "push"), new Annotation.Words(1, true, "pull+air")),
                annotate(sketch, "direction", "air", "direction-changes"));
    }

    @Test
    void airBeforeANoteStandsAtTheNote() throws DiagnosedException {
        Sketch sketch = new Sketch(1)
                .pull("1.3")
                .rest(PULL)
                .air(AirUse.FULL)
                .unwritten()
                .push("1.4")
                .air(AirUse.FULL);
        assertEquals(List.of(new Annotation.Words(1, true, "push+air before, air")), annotate(sketch, "air"));
    }

    @Test
    void linesAboveAreFilledAtTheFirstNoteOfALine() throws DiagnosedException {
        Sketch sketch = new Sketch(1).push("1.3").pull("1.3").bass("G");
        Style style = Sketch.style("two-lines");
        Arrangement arrangement = sketch.arrangement(style);
        List<String> syllables = Annotators.annotate(
                        new Arrangement(arrangement.tune(), arrangement.instrument(), arrangement.solution(), style),
                        List.of("buttons", "left-hand"))
                .stream()
                .map(annotation -> (Annotation.Syllable) annotation)
                .map(syllable -> syllable.noteIndex() + " " + syllable.line() + " " + syllable.text())
                .toList();
        assertEquals(List.of("0 0 3", "0 1 –", "1 0 –", "1 1 3", "1 2 G"), syllables);
    }

    @Test
    void leftHandAloneIsTheFirstLine() throws DiagnosedException {
        assertEquals(
                List.of(new Annotation.Syllable(1, 0, "left-hand", "G")),
                annotate(new Sketch(1).push("1.3").push("1.4").bass("G"), "left-hand"));
    }

    @Test
    void theLegendSaysEachThingOnceInTheOrderOfTheCatalog() throws DiagnosedException {
        Arrangement arrangement = new Sketch(1).push("1.3").bass("G").arrangement();
        List<String> signs = Annotators.legend(
                        arrangement.tune(),
                        arrangement.instrument(),
                        arrangement.solution(),
                        arrangement.style(),
                        List.of("left-hand", "direction-changes", "direction"))
                .stream()
                .map(LegendEntry::sign)
                .toList();
        assertEquals(List.of("push", "G"), signs);
    }

    @Test
    void anUnknownIdNamesTheNearest() {
        DiagnosedException e = assertThrows(
                DiagnosedException.class, () -> annotate(new Sketch(1).push("1.3"), "buttons", "finger", "zzz"));
        String all =
                "There are: direction, direction-changes, air, air-on-count, opening, opening-at-repeat, sounding-key, hand, fingers, buttons, also-buttons, direction-line, pull-line, left-hand, left-hand-fingers, chord-symbols, bellows-signs, counts.";
        assertEquals(
                List.of(
                        "options: error [unknown-name] There are no marks called finger.\n  Maybe fingers.\n  " + all,
                        "options: error [unknown-name] There are no marks called zzz.\n  " + all),
                e.diagnostics().stream().map(remark -> remark.print("options")).toList());
    }

    @Test
    void theDefaultLeavesOutFingersAndEveryChange() {
        assertEquals(
                List.of("direction", "air", "opening", "sounding-key", "hand", "buttons", "left-hand"),
                Annotators.defaultIds());
    }

    private static List<Annotation> annotate(Sketch sketch, String... ids) throws DiagnosedException {
        Arrangement arrangement = sketch.arrangement();
        return Annotators.annotate(arrangement, List.of(ids));
    }
}
