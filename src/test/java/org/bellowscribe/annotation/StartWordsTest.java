package org.bellowscribe.annotation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.solver.AirUse;
import org.junit.jupiter.api.Test;

/** Every event lasts a quarter. */
class StartWordsTest {

    private static final List<String> IDS = List.of("direction", "opening", "hand", "buttons");

    private static Sketch quarters(int count) {
        Sketch sketch = new Sketch(2);
        for (int i = 0; i < count; i++) {
            sketch.push("2.3").open(6000);
        }
        return sketch;
    }

    private static List<String> words(Sketch sketch, SignedMarks signed) throws DiagnosedException {
        return Annotators.annotate(sketch.arrangement(), IDS, signed).stream()
                .filter(Annotation.Words.class::isInstance)
                .map(mark -> mark.noteIndex() + ": " + ((Annotation.Words) mark).text())
                .toList();
    }

    private static List<String> words(Sketch sketch) throws DiagnosedException {
        return words(sketch, SignedMarks.NONE);
    }

    private static SignedMarks signed(int event) {
        TreeMap<Integer, SortedSet<MarkAspect>> aspects = new TreeMap<>();
        aspects.put(event, new TreeSet<>(List.of(MarkAspect.HAND)));
        return new SignedMarks(aspects);
    }

    @Test
    void whatDoesNotFitAboveTheFirstNoteStandsWhereThereIsRoomForIt() throws DiagnosedException {
        assertEquals(List.of("0: push, open 1/2", "4: inner, hand 3"), words(quarters(8)));
    }

    @Test
    void aSheetWithFewerMarksHasItsWordsWhereTheFullOneHasThem() throws DiagnosedException {
        Sketch sketch = quarters(8);
        List<Annotation> full = Annotators.annotate(sketch.arrangement(), Annotators.defaultIds());
        List<Annotation> fewer = Annotators.annotate(sketch.arrangement(), List.of("hand", "direction"));
        assertTrue(full.contains(new Annotation.Words(0, true, "push, open 1/2")), full.toString());
        assertTrue(full.contains(new Annotation.Words(4, true, "inner, hand 3")), full.toString());
        assertEquals(List.of(new Annotation.Words(0, true, "push"), new Annotation.Words(4, true, "hand 3")), fewer);
    }

    @Test
    void thePlaceOfTheHandIsSaidBeforeTheHandMoves() throws DiagnosedException {
        Sketch sketch =
                quarters(2).push("2.7").hand(5).push("2.7").hand(5).push("2.7").hand(5);
        assertEquals(List.of("0: push, open 1/2", "1: inner, hand 3", "2: hand 5"), words(sketch));
    }

    @Test
    void theRowNeedNotWaitForAHandThatMovesAtOnce() throws DiagnosedException {
        Sketch sketch = quarters(1).push("2.7").hand(5);
        for (int i = 0; i < 8; i++) {
            sketch.push("2.7").hand(5);
        }
        assertEquals(List.of("0: push, open 1/2, hand 3", "1: hand 5", "5: inner"), words(sketch));
    }

    @Test
    void aTuneOfOneNoteSaysAllAboveIt() throws DiagnosedException {
        assertEquals(List.of("0: push, open 1/2, inner, hand 3"), words(quarters(1)));
    }

    @Test
    void wordsThatAreFixedStayWhereTheyAre() throws DiagnosedException {
        assertEquals(List.of("0: push, open 1/2, hand 3!", "5: inner"), words(quarters(8), signed(0)));
        assertEquals(List.of("0: push, open 1/2", "4: inner, hand 3!"), words(quarters(8), signed(4)));
    }

    @Test
    void otherWordsKeepTheirDistance() throws DiagnosedException {
        Sketch sketch = quarters(3).pull("2.3").air(AirUse.FULL);
        for (int i = 0; i < 4; i++) {
            sketch.pull("2.4");
        }
        List<String> ids = List.of("direction", "opening", "hand", "buttons", "air");
        List<String> words = Annotators.annotate(sketch.arrangement(), ids).stream()
                .filter(Annotation.Words.class::isInstance)
                .map(mark -> mark.noteIndex() + ": " + ((Annotation.Words) mark).text())
                .toList();
        assertEquals(List.of("0: push, open 1/2", "3: pull+air", "5: inner, hand 3"), words);
    }
}
