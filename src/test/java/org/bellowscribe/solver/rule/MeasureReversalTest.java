package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class MeasureReversalTest {

    private final MeasureReversal rule = new MeasureReversal();

    private final Points points = Scene.points("slow", 3, "quick", 8);

    private int points(Moment before, Choice from, Moment after, Choice to) {
        return rule.points(before, from, after, to, points);
    }

    @Test
    void reversalInsideAMeasureCosts() {
        assertEquals(
                3, points(Scene.noteInMeasure(4), Scene.push(3, 1, 3), Scene.noteInMeasure(4), Scene.pull(3, 1, 3)));
    }

    @Test
    void lessTimeCostsMore() {
        assertEquals(8, points(Scene.note("D4", 0.2), Scene.push(3, 1, 3), Scene.note("E4", 1), Scene.pull(3, 1, 3)));
    }

    @Test
    void reversalAtTheBarLineIsFree() {
        assertEquals(
                0, points(Scene.noteInMeasure(4), Scene.push(3, 1, 3), Scene.noteInMeasure(5), Scene.pull(3, 1, 3)));
    }

    @Test
    void reversalAfterARestAndNoReversalAreFree() {
        Choice silent = Scene.silent(BellowsDirection.PUSH, 3);
        assertEquals(0, points(Scene.rest(1), silent, Scene.noteInMeasure(0), Scene.pull(3, 1, 3)));
        assertEquals(
                0, points(Scene.noteInMeasure(4), Scene.push(3, 1, 3), Scene.noteInMeasure(4), Scene.push(3, 1, 4)));
    }
}
