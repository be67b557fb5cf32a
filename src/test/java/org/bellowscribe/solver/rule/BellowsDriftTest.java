package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Pitch;
import org.junit.jupiter.api.Test;

class BellowsDriftTest {

    private final BellowsDrift rule = new BellowsDrift();

    private final Points points = Scene.points("second", 4, "second-near-the-end", 8);

    @Test
    void fromAFifthToFourFifthsIsFree() {
        assertEquals(0, rule.points(Scene.note("E4", 1), 20, points));
        assertEquals(0, rule.points(Scene.note("E4", 1), 80, points));
    }

    @Test
    void timeOutsideCosts() {
        assertEquals(4, rule.points(Scene.note("E4", 1), 19, points));
        assertEquals(6, rule.points(Scene.note("E4", 1.5), 81, points));
    }

    @Test
    void aMannerMayAskForTheMiddleHalf() {
        Points middle = Scene.points("second-off-the-middle", 3);
        assertEquals(0, rule.points(Scene.note("E4", 1), 25, middle));
        assertEquals(3, rule.points(Scene.note("E4", 1), 24, middle));
        assertEquals(3, rule.points(Scene.note("E4", 1), 76, middle));
    }

    @Test
    void timeNearAnEndCostsMore() {
        assertEquals(4, rule.points(Scene.note("E4", 1), 10, points));
        assertEquals(8, rule.points(Scene.note("E4", 1), 9, points));
        assertEquals(8, rule.points(Scene.note("E4", 1), 91, points));
    }

    @Test
    void aRestTakesTimeToo() {
        assertEquals(2, rule.points(Scene.rest(0.5), 5, Scene.points("second-near-the-end", 4)));
    }

    @Test
    void shortNotesTogetherCostWhatTheirTimeDoes() {
        int sum = 0;
        for (int sixteenth = 0; sixteenth < 16; sixteenth++) {
            Fraction onset = Fraction.of(sixteenth, 16);
            Event event = new Event(0, 0, onset, Fraction.of(1, 16), List.of(Pitch.parse("E4")), List.of(0));
            sum += rule.points(new Moment(event, 0.1, false), 85, points);
        }
        assertEquals(6, sum);
    }
}
