package org.bellowscribe.annotation.mark;

import static org.bellowscribe.instrument.BellowsDirection.PULL;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Sketch;
import org.junit.jupiter.api.Test;

class DirectionTest {

    @Test
    void theFirstNoteSaysTheDirection() {
        assertEquals(
                List.of("1: push"), words(new Sketch(1).rest(PULL).push("1.3").pull("1.3")));
    }

    @Test
    void everyRepeatedSectionSaysTheDirection() {
        Sketch sketch = new Sketch(1)
                .push("1.3")
                .push("1.4")
                .measure()
                .pull("1.5")
                .pull("1.6")
                .order(1, 1, 2, 2);
        assertEquals(List.of("0: push", "2: pull"), words(sketch));
    }

    @Test
    void aSectionAfterARepeatSaysTheDirectionAlsoIfItIsPlayedOnce() {
        Sketch sketch = new Sketch(1).push("1.3").measure().pull("1.5").order(1, 1, 2);
        assertEquals(List.of("0: push", "1: pull"), words(sketch));
    }

    @Test
    void everyEndingSaysTheDirection() {
        Sketch sketch = new Sketch(1)
                .push("1.3")
                .measure()
                .pull("1.4")
                .measure()
                .push("1.5")
                .order(1, 2, 1, 3);
        assertEquals(List.of("0: push", "1: pull", "2: push"), words(sketch));
    }

    @Test
    void aSectionThatBeginsWithARestSaysTheDirectionAtItsFirstNote() {
        Sketch sketch =
                new Sketch(1).push("1.3").measure().rest(PULL).push("1.4").order(1, 2, 2);
        assertEquals(List.of("0: push", "2: push"), words(sketch));
    }

    @Test
    void aPickUpAndTheSectionAfterItSayTheSameDirectionOnce() {
        Sketch sketch = new Sketch(1).pickUp().push("1.3").measure().push("1.4").order(1, 2, 2);
        assertEquals(List.of("0: push"), words(sketch));
    }

    @Test
    void aSectionThatTurnsAfterItsPickUpSaysTheDirection() {
        Sketch sketch = new Sketch(1).pickUp().push("1.3").measure().pull("1.4").order(1, 2, 2);
        assertEquals(List.of("0: push", "1: pull"), words(sketch));
    }

    @Test
    void insideASectionNothingIsSaid() {
        assertEquals(
                List.of("0: push"), words(new Sketch(1).push("1.3").measure().pull("1.3")));
    }

    @Test
    void theLegendExplainsTheWordsThatOccur() {
        assertEquals(
                List.of("pull: open the bellows from this note on"),
                Texts.legend(
                        new Direction(), new Sketch(1).pull("1.3").push("1.3").arrangement()));
    }

    private static List<String> words(Sketch sketch) {
        return Texts.words(new Direction(), sketch.arrangement());
    }
}
