package org.bellowscribe.syllabus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Sketch;
import org.bellowscribe.decision.SketchedTune;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.syllabus.Thing.Kind;
import org.junit.jupiter.api.Test;

class TuneThingsTest {

    private static List<Thing> of(Kind kind, Sketch sketch) {
        return TuneThings.of(SketchedTune.of(sketch)).stream()
                .filter(thing -> thing.kind() == kind)
                .toList();
    }

    private static Thing thing(Kind kind, String name) {
        return new Thing(kind, 0, 0, name);
    }

    @Test
    void aButtonIsAThingInEachDirection() {
        assertEquals(
                List.of(
                        new Thing(Kind.BUTTON, 1, 3, "pull"),
                        new Thing(Kind.BUTTON, 1, 3, "push"),
                        new Thing(Kind.BUTTON, 1, 4, "push")),
                of(
                        Kind.BUTTON,
                        new Sketch(1).push("1.3").push("1.4").push("1.3").pull("1.3")));
    }

    @Test
    void bassesAndChordsAreToldApart() {
        Sketch sketch = new Sketch(1).push("1.3").bass("G").push("1.3").chord("E", Third.MINOR);
        assertEquals(List.of(new Thing(Kind.BASS, 1, 1, "G push")), of(Kind.BASS, sketch));
        assertEquals(List.of(new Thing(Kind.CHORD, 1, 1, "em push")), of(Kind.CHORD, sketch));
    }

    @Test
    void aSilentLeftHandIsNothingToLearn() {
        assertEquals(List.of(), of(Kind.BASS, new Sketch(1).push("1.3").silent()));
    }

    @Test
    void aReversalOnOneButtonIsAKindOfItsOwn() {
        assertEquals(
                List.of(thing(Kind.REVERSAL, "on one button")),
                of(Kind.REVERSAL, new Sketch(1).push("1.3").pull("1.3")));
    }

    @Test
    void aReversalBetweenButtonsOfARowIsAnother() {
        assertEquals(
                List.of(thing(Kind.REVERSAL, "between two buttons of a row")),
                of(Kind.REVERSAL, new Sketch(1).push("1.3").pull("1.4")));
    }

    @Test
    void aReversalWithARowChangeIsAnotherAndNoRowChangeOfItsOwn() {
        Sketch sketch = new Sketch(2).push("1.3").pull("2.4");
        assertEquals(List.of(thing(Kind.REVERSAL, "with a change of row")), of(Kind.REVERSAL, sketch));
        assertEquals(List.of(), of(Kind.ROW_CHANGE, sketch));
    }

    @Test
    void bellowsThatTurnInARestHaveTime() {
        assertEquals(
                List.of(thing(Kind.REVERSAL, "in a rest")),
                of(
                        Kind.REVERSAL,
                        new Sketch(1).push("1.3").rest(BellowsDirection.PUSH).pull("1.3")));
    }

    @Test
    void aRowChangeCountsOnceForBothWays() {
        assertEquals(
                List.of(new Thing(Kind.ROW_CHANGE, 1, 2, "")),
                of(Kind.ROW_CHANGE, new Sketch(2).push("1.3").push("2.3").push("1.3")));
    }

    @Test
    void turnsCountInTheOrderOfPlay() {
        // As written push, push; the second part sounds before the first comes again.
        Sketch sketch = new Sketch(1).push("1.3").measure().pull("1.4").order(2, 2);
        assertEquals(List.of(), of(Kind.REVERSAL, sketch));
    }

    @Test
    void placesOfTheHandAreThings() {
        assertEquals(
                List.of(new Thing(Kind.HAND_PLACE, 0, 3, ""), new Thing(Kind.HAND_PLACE, 0, 5, "")),
                of(Kind.HAND_PLACE, new Sketch(1).push("1.3").push("1.6").hand(5)));
    }

    @Test
    void lightAndFullAirAreTwoThings() {
        Sketch sketch = new Sketch(1).push("1.3").air(AirUse.LIGHT).pull("1.3").air(AirUse.FULL);
        assertEquals(List.of(thing(Kind.AIR, "full"), thing(Kind.AIR, "light")), of(Kind.AIR, sketch));
    }

    @Test
    void timeKeyAndRhythmAreThings() {
        Sketch sketch = new Sketch(1).push("1.3").push("1.3");
        assertEquals(List.of(thing(Kind.TIME, "2/2")), of(Kind.TIME, sketch));
        assertEquals(List.of(thing(Kind.KEY, "C")), of(Kind.KEY, sketch));
        assertEquals(List.of(thing(Kind.RHYTHM, "quarter + quarter")), of(Kind.RHYTHM, sketch));
    }
}
