package org.bellowscribe.annotation.mark;

import static org.bellowscribe.instrument.BellowsDirection.PULL;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Sketch;
import org.bellowscribe.solver.AirUse;
import org.junit.jupiter.api.Test;

class DirectionChangesTest {

    @Test
    void everyTurnSaysTheDirection() {
        Sketch sketch =
                new Sketch(1).push("1.3").push("1.4").pull("1.4").pull("1.3").push("1.3");
        assertEquals(List.of("0: push", "2: pull", "4: push"), words(sketch));
    }

    @Test
    void aTurnOnTheWayBackCounts() {
        Sketch sketch =
                new Sketch(1).push("1.3").measure().push("1.4").pull("1.4").order(1, 2, 2);
        assertEquals(List.of("0: push", "1: push", "2: pull"), words(sketch));
    }

    @Test
    void theBellowsDoNotTurnInASilentRest() {
        assertEquals(
                List.of("0: push"), words(new Sketch(1).push("1.3").rest(PULL).push("1.4")));
    }

    @Test
    void theyTurnInARestWithAir() {
        Sketch sketch = new Sketch(1).push("1.3").rest(PULL).air(AirUse.FULL).push("1.4");
        assertEquals(List.of("0: push", "2: push"), words(sketch));
    }

    @Test
    void theyTurnInARestWithTheLeftHand() {
        assertEquals(
                List.of("0: push", "2: push"),
                words(new Sketch(1).push("1.3").rest(PULL).bass("G").push("1.4")));
    }

    @Test
    void theLegendExplainsBothDirections() {
        assertEquals(
                List.of("push: close the bellows from this note on", "pull: open the bellows from this note on"),
                Texts.legend(
                        new DirectionChanges(),
                        new Sketch(1).pull("1.3").push("1.3").arrangement()));
    }

    private static List<String> words(Sketch sketch) {
        return Texts.words(new DirectionChanges(), sketch.arrangement());
    }
}
