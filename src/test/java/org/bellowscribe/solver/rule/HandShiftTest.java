package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class HandShiftTest {

    private final HandShift rule = new HandShift();

    private final Points points = Scene.points("slow", 8, "per-button", 1, "beside-rest", 1, "lean", 3);

    @Test
    void movingTheHandCostsByTheWay() {
        assertEquals(
                10,
                rule.points(
                        Scene.note("D4", 1), Scene.push(3, 1, 3), Scene.note("A4", 1), Scene.push(5, 1, 5), points));
    }

    @Test
    void movingInARestIsCheap() {
        assertEquals(
                1, rule.points(Scene.note("D4", 1), Scene.push(3, 1, 3), Scene.rest(1), Scene.push(6, 1, 6), points));
    }

    @Test
    void leaningHalfAButtonLowerTakesLittle() {
        assertEquals(3, shift(Scene.push(3, 1, 3), Scene.leaning(2, 2, 3)));
        assertEquals(3, shift(Scene.leaning(2, 2, 3), Scene.push(2, 2, 3)));
        assertEquals(0, shift(Scene.leaning(3, 1, 3), Scene.leaning(2, 2, 3)));
        assertEquals(9, shift(Scene.leaning(3, 1, 3), Scene.leaning(4, 1, 4)));
    }

    private int shift(Choice from, Choice to) {
        return rule.points(Scene.note("D4", 1), from, Scene.note("G4", 1), to, points);
    }

    @Test
    void handThatStaysIsFree() {
        assertEquals(
                0,
                rule.points(
                        Scene.note("D4", 1), Scene.push(3, 1, 3), Scene.note("A4", 1), Scene.push(3, 1, 5), points));
    }

    @Test
    void strappedHandsNeverShift() {
        assertEquals(
                0,
                rule.points(Scene.note("D4", 1), Scene.anglo(1, 1), Scene.note("G4", 1), Scene.anglo(1, 10), points));
    }
}
