package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class HeldOverTest {

    private final HeldOver rule = new HeldOver();

    private final Points points = Scene.points("each", 7);

    @Test
    void noteThatSoundsOnIsFree() {
        assertEquals(
                0,
                rule.points(
                        Scene.note("D4", 1), Scene.push(3, 1, 3), Scene.heldOver("D4"), Scene.push(3, 1, 3), points));
    }

    @Test
    void turnAndOtherButtonAreCharged() {
        assertEquals(
                7,
                rule.points(
                        Scene.note("D4", 1), Scene.push(3, 1, 3), Scene.heldOver("D4"), Scene.pull(3, 1, 3), points));
        assertEquals(
                7,
                rule.points(
                        Scene.note("D4", 1), Scene.push(3, 1, 3), Scene.heldOver("D4"), Scene.push(3, 2, 3), points));
    }

    @Test
    void noteThatIsStruckIsFree() {
        assertEquals(
                0,
                rule.points(
                        Scene.note("D4", 1), Scene.push(3, 1, 3), Scene.note("D4", 1), Scene.pull(3, 1, 3), points));
    }
}
