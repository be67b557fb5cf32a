package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class HarmonyMisfitTest {

    private final HarmonyMisfit rule = new HarmonyMisfit();

    private final Points points = Scene.points("factor", 2);

    @Test
    void guessThatFitsBadlyCostsItsMisfit() {
        assertEquals(
                14,
                rule.points(
                        Scene.note("E4", 1), Scene.wanted(LeftHandKind.BASS, true, "G", 7), LeftHandFit.EXACT, points));
    }

    @Test
    void silenceHasNoHarmonyToMiss() {
        assertEquals(
                0,
                rule.points(
                        Scene.note("E4", 1),
                        Scene.wanted(LeftHandKind.BASS, true, "G", 7),
                        LeftHandFit.SILENT,
                        points));
    }
}
