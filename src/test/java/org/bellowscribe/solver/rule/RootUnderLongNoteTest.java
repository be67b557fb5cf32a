package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class RootUnderLongNoteTest {

    private final RootUnderLongNote rule = new RootUnderLongNote();

    private final Points points = Scene.points("each", 6);

    @Test
    void fifthUnderALongRootCosts() {
        assertEquals(
                6,
                rule.points(
                        Scene.note("G4", 1), Scene.wanted(LeftHandKind.BASS, true, "G", 0), LeftHandFit.FIFTH, points));
    }

    @Test
    void fifthUnderAPassingNoteIsFree() {
        assertEquals(
                0,
                rule.points(
                        Scene.note("A4", 1), Scene.wanted(LeftHandKind.BASS, true, "G", 0), LeftHandFit.FIFTH, points));
        assertEquals(
                0,
                rule.points(
                        Scene.note("G4", 0.2),
                        Scene.wanted(LeftHandKind.BASS, true, "G", 0),
                        LeftHandFit.FIFTH,
                        points));
    }
}
