package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class UnlikeMeasureTest {

    private final UnlikeMeasure rule = new UnlikeMeasure();

    @Test
    void eachMeasureThatDiffersCosts() {
        assertEquals(6, rule.points(Scene.points("each", 6)));
    }

    @Test
    void costsNothingInAMannerThatDoesNotMind() {
        assertEquals(0, rule.points(Points.NONE));
    }
}
