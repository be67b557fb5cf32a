package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.solver.Points;
import org.junit.jupiter.api.Test;

class RelativeChordTest {

    private final RelativeChord rule = new RelativeChord();

    private final Points points = Scene.points("first-beat", 20, "chord", 10, "closing-first-beat", 40);

    @Test
    void costsByTheBeat() {
        assertEquals(
                20,
                rule.points(
                        Scene.note("E4", 1),
                        Scene.wanted(LeftHandKind.BASS, true, "G", 0),
                        LeftHandFit.RELATIVE,
                        points));
        assertEquals(
                10,
                rule.points(
                        Scene.note("E4", 1),
                        Scene.wanted(LeftHandKind.CHORD, false, "G", 0),
                        LeftHandFit.RELATIVE,
                        points));
    }

    @Test
    void costsMoreAtTheClose() {
        assertEquals(
                40,
                rule.points(
                        Scene.closingNote("G4"),
                        Scene.wanted(LeftHandKind.BASS, true, "G", 0),
                        LeftHandFit.RELATIVE,
                        points));
    }

    @Test
    void exactSoundIsFree() {
        assertEquals(
                0,
                rule.points(
                        Scene.note("E4", 1), Scene.wanted(LeftHandKind.BASS, true, "G", 0), LeftHandFit.EXACT, points));
    }
}
