package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class AirPressTest {

    private final AirPress rule = new AirPress();

    private final Points points = Scene.points(
            "held-note",
            4,
            "long-note",
            6,
            "short-note",
            12,
            "off-beat",
            2,
            "rest",
            2,
            "full",
            1,
            "full-short-note",
            5);

    @Test
    void pressCostsByTheLengthOfTheNote() {
        assertEquals(6, rule.points(Scene.note("E4", 0.5), AirUse.LIGHT, points));
        assertEquals(12, rule.points(Scene.note("E4", 0.1), AirUse.LIGHT, points));
        assertEquals(7, rule.points(Scene.note("E4", 0.5), AirUse.FULL, points));
    }

    @Test
    void heldNoteTakesAirMostReadily() {
        assertEquals(4, rule.points(Scene.note("E4", 0.8), AirUse.LIGHT, points));
        assertEquals(5, rule.points(Scene.note("E4", 0.8), AirUse.FULL, points));
    }

    @Test
    void shortNoteBetweenTwoBeatsCostsMore() {
        assertEquals(14, rule.points(Scene.offBeat(Scene.note("E4", 0.1)), AirUse.LIGHT, points));
        assertEquals(6, rule.points(Scene.offBeat(Scene.note("E4", 0.5)), AirUse.LIGHT, points));
        assertEquals(2, rule.points(Scene.offBeat(Scene.rest(0.1)), AirUse.LIGHT, points));
    }

    @Test
    void fullAirOnAShortNoteCostsMore() {
        assertEquals(17, rule.points(Scene.note("E4", 0.1), AirUse.FULL, points));
        assertEquals(5, rule.points(Scene.note("E4", 0.3), AirUse.FULL, points));
        assertEquals(3, rule.points(Scene.rest(0.1), AirUse.FULL, points));
    }

    @Test
    void pressInARestIsCheap() {
        assertEquals(2, rule.points(Scene.rest(0.1), AirUse.LIGHT, points));
    }

    @Test
    void thumbOffTheButtonIsFree() {
        assertEquals(0, rule.points(Scene.note("E4", 0.1), AirUse.NONE, points));
    }
}
