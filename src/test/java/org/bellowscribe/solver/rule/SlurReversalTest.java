package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.junit.jupiter.api.Test;

class SlurReversalTest {

    private final Choice pushed = Scene.push(3, 1, 3);
    private final Choice pulled = Scene.pull(3, 1, 4);

    private int points(Moment before, Choice from, Moment after, Choice to) {
        return new SlurReversal().points(before, from, after, to, Scene.points("each", 6));
    }

    @Test
    void reversalUnderASlurCosts() {
        assertEquals(6, points(Scene.placed(1, false), pushed, Scene.placed(2, true), pulled));
    }

    @Test
    void withoutASlurOrAReversalNothingCosts() {
        assertEquals(0, points(Scene.placed(1, true), pushed, Scene.placed(2, false), pulled));
        assertEquals(0, points(Scene.placed(1, false), pushed, Scene.placed(2, true), pushed));
    }

    @Test
    void noSlurLeadsBackToTheStartOfARepeat() {
        assertEquals(0, points(Scene.placed(7, true), pushed, Scene.placed(2, true), pulled));
    }

    @Test
    void afterARestTheBellowsTurnFreely() {
        Choice silent = Scene.silent(BellowsDirection.PUSH, 3);
        assertEquals(0, points(Scene.rest(1), silent, Scene.placed(1, true), pulled));
    }
}
