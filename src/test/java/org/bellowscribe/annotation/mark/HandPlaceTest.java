package org.bellowscribe.annotation.mark;

import static org.bellowscribe.instrument.BellowsDirection.PUSH;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Sketch;
import org.junit.jupiter.api.Test;

class HandPlaceTest {

    @Test
    void thePlaceIsSaidAtTheStartAndWhereTheHandMoves() {
        Sketch sketch = new Sketch(1)
                .push("1.3")
                .hand(3)
                .push("1.4")
                .hand(3)
                .push("1.7")
                .hand(5)
                .push("1.8")
                .hand(5);
        assertEquals(List.of("0: hand 3", "2: hand 5"), words(sketch));
    }

    @Test
    void aMoveInARestIsSaidAtTheNextNote() {
        Sketch sketch =
                new Sketch(1).push("1.3").hand(3).rest(PUSH).hand(5).push("1.6").hand(5);
        assertEquals(List.of("0: hand 3", "2: hand 5"), words(sketch));
    }

    @Test
    void aMoveBackAtARepeatIsSaid() {
        Sketch sketch = new Sketch(1)
                .push("1.3")
                .hand(3)
                .measure()
                .push("1.4")
                .hand(3)
                .push("1.7")
                .hand(5)
                .order(1, 2, 2);
        assertEquals(List.of("0: hand 3", "1: hand 3", "2: hand 5"), words(sketch));
    }

    @Test
    void theLegendExplainsThePlace() {
        assertEquals(
                List.of("hand 4: the index finger lies at button 4"),
                Texts.legend(new HandPlace(), new Sketch(1).push("1.4").hand(4).arrangement()));
    }

    private static List<String> words(Sketch sketch) {
        return Texts.words(new HandPlace(), sketch.arrangement());
    }
}
