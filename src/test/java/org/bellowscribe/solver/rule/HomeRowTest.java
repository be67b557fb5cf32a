package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class HomeRowTest {

    private final HomeRow rule = new HomeRow();

    private final Points points = Scene.points("each", 4, "with-chord", 1);

    private static Moment atHomeOn(int row) {
        Moment moment = Scene.note("D4", 1);
        return new Moment(moment.event(), moment.seconds(), false, row, false);
    }

    @Test
    void noteOffTheHomeRowCosts() {
        assertEquals(4, rule.points(atHomeOn(2), Scene.push(3, 1, 3), points));
        assertEquals(0, rule.points(atHomeOn(1), Scene.push(3, 1, 3), points));
    }

    @Test
    void noteGroupCostsOnceIfPartOfItIsOff() {
        assertEquals(4, rule.points(atHomeOn(2), Scene.overTwoRows(), points));
    }

    @Test
    void whereNoRowIsHomeAllAreFree() {
        assertEquals(0, rule.points(atHomeOn(0), Scene.push(3, 1, 3), points));
    }

    @Test
    void chordOnThatSideOnlyMakesItCheaper() {
        Moment home = atHomeOn(2);
        Moment pulledChord =
                new Moment(home.event(), home.seconds(), false, 2, false, Set.of(BellowsDirection.PULL), true);
        assertEquals(1, rule.points(pulledChord, Scene.pull(3, 1, 3), points));
        assertEquals(4, rule.points(pulledChord, Scene.push(3, 1, 3), points));
    }

    @Test
    void restsAreFree() {
        assertEquals(0, rule.points(atHomeOn(2), Scene.silent(BellowsDirection.PUSH, 3), points));
    }
}
