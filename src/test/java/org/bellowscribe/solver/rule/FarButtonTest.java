package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class FarButtonTest {

    private final FarButton rule = new FarButton();

    private final Points points = Scene.points("per-button", 2);

    private int points(Choice choice) {
        return rule.points(Scene.note("D4", 1), choice, points);
    }

    @Test
    void buttonsOfTheHomePositionAreFree() {
        assertEquals(0, points(Scene.push(3, 1, 3)));
        assertEquals(0, points(Scene.pull(4, 2, 7)));
    }

    @Test
    void buttonsBeyondCostByTheWay() {
        assertEquals(2, points(Scene.push(1, 1, 2)));
        assertEquals(6, points(Scene.push(7, 1, 10)));
    }

    @Test
    void strappedHandsHaveNoOtherButtons() {
        assertEquals(0, points(Scene.anglo(1, 10)));
    }
}
