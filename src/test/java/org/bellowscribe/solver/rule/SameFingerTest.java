package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class SameFingerTest {

    private final SameFinger rule = new SameFinger();

    private final Points points = Scene.points("slow", 2);

    @Test
    void sameFingerOnTheOtherRowIsChoppy() {
        assertEquals(
                2,
                rule.points(
                        Scene.note("D4", 1), Scene.push(3, 1, 3), Scene.note("G4", 1), Scene.push(3, 2, 3), points));
    }

    @Test
    void sameButtonIsFree() {
        assertEquals(
                0,
                rule.points(
                        Scene.note("D4", 1), Scene.push(3, 1, 3), Scene.note("E4", 1), Scene.pull(3, 1, 3), points));
    }

    @Test
    void fingerThatTheHandCarriesAlongIsChoppyTooAnotherOneIsNot() {
        assertEquals(
                2,
                rule.points(
                        Scene.note("D4", 1), Scene.push(3, 1, 3), Scene.note("F#4", 1), Scene.push(4, 1, 4), points));
        assertEquals(
                0,
                rule.points(
                        Scene.note("D4", 1), Scene.push(3, 1, 3), Scene.note("F#4", 1), Scene.push(3, 1, 4), points));
    }

    @Test
    void sameFingerOfTheOtherHandIsFree() {
        assertEquals(
                0, rule.points(Scene.note("D4", 1), Scene.anglo(1, 5), Scene.note("G4", 1), Scene.anglo(1, 6), points));
        assertEquals(
                points.of(Scene.note("D4", 1).pace()),
                rule.points(Scene.note("D4", 1), Scene.anglo(1, 6), Scene.note("G4", 1), Scene.anglo(2, 6), points));
    }
}
