package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class BellowsReversalTest {

    private final BellowsReversal rule = new BellowsReversal();

    private final Points points = Scene.points("slow", 2, "very-quick", 8, "after-rest", 1);

    @Test
    void reversalCostsByTheTimeOfTheNoteBefore() {
        assertEquals(
                2,
                rule.points(
                        Scene.note("D4", 0.6), Scene.push(3, 1, 3), Scene.note("E4", 1), Scene.pull(3, 1, 3), points));
        assertEquals(
                8,
                rule.points(
                        Scene.note("D4", 0.1), Scene.push(3, 1, 3), Scene.note("E4", 1), Scene.pull(3, 1, 3), points));
    }

    @Test
    void reversalAfterARestIsCheap() {
        assertEquals(
                1, rule.points(Scene.rest(0.1), Scene.push(3, 1, 3), Scene.note("E4", 1), Scene.pull(3, 1, 3), points));
    }

    @Test
    void stayingInOneDirectionIsFree() {
        assertEquals(
                0,
                rule.points(
                        Scene.note("D4", 0.1), Scene.push(3, 1, 3), Scene.note("F#4", 1), Scene.push(3, 1, 4), points));
    }
}
