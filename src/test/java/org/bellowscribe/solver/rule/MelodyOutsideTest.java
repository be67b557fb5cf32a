package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

/** All under a harmony of G. */
class MelodyOutsideTest {

    private static final LeftHandSound D_BASS = LeftHandSound.bass(PitchClass.parse("D"));
    private static final LeftHandSound E_BASS = LeftHandSound.bass(PitchClass.parse("E"));

    private static int charge(String melody, LeftHandSound sound, LeftHandFit fit) {
        LeftHandPlay wanted = Scene.wanted(LeftHandKind.BASS, false, "G", 0);
        LeftHandPlay play = new LeftHandPlay(wanted.wanted(), wanted.harmony(), null, sound);
        return new MelodyOutside().points(Scene.note(melody, 1), play, fit, Scene.points("each", 2));
    }

    @Test
    void bassOfTheFifthBelongsUnderTheNotesOfTheDominant() {
        assertEquals(0, charge("A4", D_BASS, LeftHandFit.FIFTH));
        assertEquals(0, charge("C5", D_BASS, LeftHandFit.FIFTH));
        assertEquals(2, charge("B4", D_BASS, LeftHandFit.FIFTH));
    }

    @Test
    void relativeMinorBelongsUnderItsOwnNotes() {
        assertEquals(0, charge("B4", E_BASS, LeftHandFit.RELATIVE_MINOR));
        assertEquals(2, charge("A4", E_BASS, LeftHandFit.RELATIVE_MINOR));
    }

    @Test
    void whatTheHarmonyAsksForNeverCosts() {
        LeftHandSound g = LeftHandSound.chord(PitchClass.parse("G"), Third.MAJOR);
        assertEquals(0, charge("A4", g, LeftHandFit.EXACT));
    }
}
