package org.bellowscribe.solver.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.accompaniment.HarmonyOption;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Points;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

class MelodyClashTest {

    private static final Points POINTS = Scene.points("bass", 3, "chord", 4, "guessed", 5);

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

    @Test
    void guessedHarmonyASemitoneBesideTheMelodyNoteCosts() {
        assertEquals(5, guessed("C#5", LeftHandSound.bass(PitchClass.parse("D"))));
        assertEquals(5, guessed("D#5", major("E")));
        assertEquals(0, guessed("E5", LeftHandSound.bass(PitchClass.parse("D"))));
    }

    private static int guessed(String melody, LeftHandSound sound) {
        LeftHandPlay one = Scene.wanted(LeftHandKind.CHORD, false, "E", 0);
        HarmonyOption other = new HarmonyOption(ChordSymbol.major(PitchClass.parse("B")), 2);
        WantedSound two = new WantedSound(
                0,
                Fraction.ZERO,
                Fraction.QUARTER,
                LeftHandKind.CHORD,
                false,
                List.of(one.wanted().harmonies().get(0), other));
        LeftHandPlay play = new LeftHandPlay(two, one.harmony(), null, sound);
        return new MelodyClash().points(Scene.note(melody, 1), play, LeftHandFit.EXACT, POINTS);
    }
}
