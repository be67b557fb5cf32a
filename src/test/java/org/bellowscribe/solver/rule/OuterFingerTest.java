package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class OuterFingerTest {

    private final OuterFinger rule = new OuterFinger();

    private final Points points = Scene.points("each", 1);

    @Test
    void indexAndLittleFingerCost() {
        assertEquals(1, rule.points(Scene.note("D4", 1), Scene.push(3, 1, 3), points));
        assertEquals(1, rule.points(Scene.note("D5", 1), Scene.push(3, 1, 6), points));
    }

    @Test
    void indexIsFreeOnTheLowestNoteOfTheTune() {
        Moment note = Scene.note("D4", 1);
        Moment lowest = new Moment(note.event(), 1, false, Moment.NO_ROW, true);
        assertEquals(0, rule.points(lowest, Scene.push(3, 1, 3), points));
        assertEquals(1, rule.points(lowest, Scene.push(3, 1, 6), points));
    }

    @Test
    void fingersBetweenThemAreFree() {
        assertEquals(0, rule.points(Scene.note("F#4", 1), Scene.push(3, 1, 4), points));
        assertEquals(0, rule.points(Scene.note("A4", 1), Scene.push(3, 1, 5), points));
    }

    @Test
    void strappedHandsCannotLieElsewhere() {
        assertEquals(0, rule.points(Scene.note("C5", 1), Scene.anglo(1, 6), points));
    }
}
