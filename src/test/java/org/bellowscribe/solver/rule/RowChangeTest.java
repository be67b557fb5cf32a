package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class RowChangeTest {

    private final RowChange rule = new RowChange();

    private final Points points = Scene.points("slow", 4, "quick", 5);

    @Test
    void otherRowCostsByTheTime() {
        assertEquals(
                4,
                rule.points(
                        Scene.note("D4", 1), Scene.push(3, 1, 3), Scene.note("G4", 1), Scene.push(3, 2, 3), points));
        assertEquals(
                5,
                rule.points(
                        Scene.note("D4", 0.2), Scene.push(3, 1, 3), Scene.note("G4", 1), Scene.push(3, 2, 3), points));
    }

    @Test
    void sameRowAndRestsAreFree() {
        assertEquals(
                0,
                rule.points(
                        Scene.note("D4", 1), Scene.push(3, 1, 3), Scene.note("A4", 1), Scene.push(3, 1, 5), points));
        assertEquals(
                0,
                rule.points(
                        Scene.note("D4", 1),
                        Scene.push(3, 1, 3),
                        Scene.rest(1),
                        Scene.silent(BellowsDirection.PUSH, 3),
                        points));
    }

    @Test
    void eachHandHasARowOfItsOwn() {
        assertEquals(
                0, rule.points(Scene.note("D4", 1), Scene.anglo(1, 5), Scene.note("G4", 1), Scene.anglo(2, 6), points));
        assertEquals(
                4, rule.points(Scene.note("D4", 1), Scene.anglo(1, 5), Scene.note("G4", 1), Scene.anglo(2, 4), points));
    }

    @Test
    void groupOverTwoRowsIsAChange() {
        assertEquals(
                4,
                rule.points(
                        Scene.note("D4", 1), Scene.push(3, 2, 3), Scene.note("G4", 1), Scene.overTwoRows(), points));
        assertEquals(
                0,
                rule.points(
                        Scene.note("D4", 1), Scene.overTwoRows(), Scene.note("G4", 1), Scene.overTwoRows(), points));
    }
}
