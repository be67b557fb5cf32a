package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class FingerChangeTest {

    private final FingerChange rule = new FingerChange();

    private final Points points = Scene.points("slow", 4);

    private int points(Choice from, Choice to) {
        return rule.points(Scene.note("D4", 1), from, Scene.note("E4", 1), to, points);
    }

    @Test
    void anotherFingerOnTheSameButtonIsCharged() {
        assertEquals(4, points(Scene.push(3, 1, 4), Scene.push(2, 1, 4)));
        assertEquals(4, points(Scene.push(3, 1, 4), Scene.pull(2, 1, 4)));
    }

    @Test
    void theSameFingerOnItIsFree() {
        assertEquals(0, points(Scene.push(3, 1, 4), Scene.pull(3, 1, 4)));
    }

    @Test
    void anotherButtonIsFree() {
        assertEquals(0, points(Scene.push(3, 1, 4), Scene.push(3, 1, 5)));
        assertEquals(0, points(Scene.push(3, 1, 4), Scene.push(3, 2, 4)));
    }

    @Test
    void theTimeOfTheFirstNoteDecides() {
        Points quick = Scene.points("very-quick", 8);
        assertEquals(
                8,
                rule.points(
                        Scene.note("D4", 0.1), Scene.push(3, 1, 4), Scene.note("E4", 1), Scene.pull(2, 1, 4), quick));
        assertEquals(
                0,
                rule.points(
                        Scene.note("D4", 1), Scene.push(3, 1, 4), Scene.note("E4", 0.1), Scene.pull(2, 1, 4), quick));
    }
}
