package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Points;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

class MelodyClashTest {

    private static final Points POINTS = Scene.points("bass", 3, "chord", 4);

    private static int charge(String melody, LeftHandSound sound, LeftHandFit fit) {
        LeftHandPlay wanted = Scene.wanted(LeftHandKind.CHORD, false, "E", 0);
        LeftHandPlay play = new LeftHandPlay(wanted.wanted(), wanted.harmony(), null, sound);
        return new MelodyClash().points(Scene.note(melody, 1), play, fit, POINTS);
    }

    private static LeftHandSound major(String root) {
        return LeftHandSound.chord(PitchClass.parse(root), Third.MAJOR);
    }

    @Test
    void thirdBesideTheMelodyNoteCosts() {
        assertEquals(4, charge("D#5", major("C"), LeftHandFit.RELATIVE));
        assertEquals(4, charge("F5", major("C"), LeftHandFit.RELATIVE));
    }

    @Test
    void missingThirdDoesNotClash() {
        LeftHandSound open = LeftHandSound.chord(PitchClass.parse("C"), Third.NONE);
        assertEquals(0, charge("D#5", open, LeftHandFit.RELATIVE));
    }

    @Test
    void bassBesideTheMelodyNoteCosts() {
        assertEquals(3, charge("A#4", LeftHandSound.bass(PitchClass.parse("B")), LeftHandFit.FIFTH));
    }

    @Test
    void bassAWholeToneBelowTheMelodyNoteCosts() {
        assertEquals(3, charge("D5", LeftHandSound.bass(PitchClass.parse("C")), LeftHandFit.FIFTH));
        assertEquals(0, charge("C5", LeftHandSound.bass(PitchClass.parse("D")), LeftHandFit.FIFTH));
        assertEquals(0, charge("D5", major("C"), LeftHandFit.RELATIVE));
    }

    @Test
    void whatTheHarmonyAsksForNeverCosts() {
        assertEquals(0, charge("D#5", major("E"), LeftHandFit.EXACT));
    }
}
