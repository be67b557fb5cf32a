package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The tests of each rule that charges one way of missing the wanted sound. */
abstract class StandInRuleTest {

    private static final Points POINTS = Scene.points("first-beat", 20, "chord", 10, "closing-first-beat", 40);

    private final LeftHandRule rule;
    private final LeftHandFit charged;

    StandInRuleTest(LeftHandRule rule, LeftHandFit charged) {
        this.rule = rule;
        this.charged = charged;
    }

    private int charge(Moment moment, LeftHandPlay play, LeftHandFit fit) {
        return rule.points(moment, play, fit, POINTS);
    }

    @Test
    void costsByTheBeat() {
        assertEquals(20, charge(Scene.note("E4", 1), Scene.wanted(LeftHandKind.BASS, true, "G", 0), charged));
        assertEquals(10, charge(Scene.note("E4", 1), Scene.wanted(LeftHandKind.CHORD, false, "G", 0), charged));
    }

    @Test
    void costsMoreAtTheClose() {
        assertEquals(40, charge(Scene.closingNote("G4"), Scene.wanted(LeftHandKind.BASS, true, "G", 0), charged));
    }

    @ParameterizedTest
    @EnumSource(LeftHandFit.class)
    void otherWaysAreLeftToOtherRules(LeftHandFit fit) {
        int expected = fit == charged ? 20 : 0;
        assertEquals(expected, charge(Scene.note("E4", 1), Scene.wanted(LeftHandKind.BASS, true, "G", 0), fit));
    }
}
