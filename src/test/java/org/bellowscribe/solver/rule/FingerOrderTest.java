package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class FingerOrderTest {

    private final FingerOrder rule = new FingerOrder();

    private final Points points = Scene.points("each", 4);

    private int points(Choice from, Choice to) {
        return rule.points(Scene.note("D4", 1), from, Scene.note("G4", 1), to, points);
    }

    @Test
    void aLowerFingerOnAHigherButtonCrosses() {
        // Button 5 with the little finger, then 6 with the ring finger of a hand that has moved by two.
        assertEquals(4, points(Scene.push(2, 1, 5), Scene.push(4, 1, 6)));
        assertEquals(4, points(Scene.push(4, 1, 6), Scene.push(2, 1, 5)));
    }

    @Test
    void aHandThatStaysNeverCrosses() {
        assertEquals(0, points(Scene.push(3, 1, 3), Scene.push(3, 1, 6)));
        assertEquals(0, points(Scene.push(3, 1, 6), Scene.push(3, 2, 4)));
    }

    @Test
    void theSameNumberOfTheInnerRowLiesHigher() {
        assertEquals(4, points(Scene.push(3, 1, 5), Scene.push(4, 2, 5)));
        assertEquals(0, points(Scene.push(4, 1, 5), Scene.push(3, 2, 5)));
    }

    @Test
    void anotherFingerOnTheSameButtonIsNotCrossed() {
        assertEquals(0, points(Scene.push(3, 1, 5), Scene.push(4, 1, 5)));
    }

    @Test
    void aRestLeavesTheTime() {
        Choice waiting = new Choice(BellowsDirection.PUSH, 4, List.of(), List.of());
        assertEquals(0, rule.points(Scene.note("D4", 1), Scene.push(2, 1, 5), Scene.rest(1), waiting, points));
        assertEquals(0, rule.points(Scene.rest(1), waiting, Scene.note("D4", 1), Scene.push(2, 1, 5), points));
    }

    @Test
    void handsOfAConcertinaDoNotCross() {
        assertEquals(0, points(Scene.anglo(1, 4), Scene.anglo(1, 5)));
    }
}
