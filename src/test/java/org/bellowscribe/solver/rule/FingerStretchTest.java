package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class FingerStretchTest {

    private final FingerStretch rule = new FingerStretch();

    private final Points points = Scene.points("each", 4);

    @Test
    void reachingBeyondTheHandCosts() {
        assertEquals(4, rule.points(Scene.note("A3", 1), Scene.push(3, 1, 2), points));
        assertEquals(4, rule.points(Scene.note("F#5", 1), Scene.push(3, 1, 7), points));
    }

    @Test
    void buttonsUnderTheHandAreFree() {
        assertEquals(0, rule.points(Scene.note("D5", 1), Scene.push(3, 1, 6), points));
    }

    @Test
    void fifthColumnOfAConcertinaIsAStretchAndTheOthersAreNot() {
        int[] stretched = {2, 10};
        for (int number = 1; number <= 10; number++) {
            int expected = number == stretched[0] || number == stretched[1] ? 1 : 0;
            assertEquals(
                    expected * points.of("each"),
                    rule.points(Scene.note("D4", 1), Scene.anglo(1, number), points),
                    "button " + number);
        }
    }
}
