package org.bellowscribe.accompaniment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class LeftHandFitTest {

    private static final ChordSymbol G = ChordSymbol.major(PitchClass.parse("G"));
    private static final ChordSymbol A_MINOR = ChordSymbol.minor(PitchClass.parse("A"));

    private static @Nullable LeftHandFit bass(ChordTone tone, ChordSymbol harmony, String sounding) {
        WantedSound wanted = new WantedSound(
                0,
                Fraction.ZERO,
                Fraction.QUARTER,
                LeftHandKind.BASS,
                tone,
                false,
                List.of(new HarmonyOption(harmony, 0)));
        return LeftHandFit.of(wanted, harmony, LeftHandSound.bass(PitchClass.parse(sounding)));
    }

    private static @Nullable LeftHandFit chord(ChordSymbol harmony, String root, Third third) {
        WantedSound wanted = new WantedSound(
                0, Fraction.ZERO, Fraction.QUARTER, LeftHandKind.CHORD, false, List.of(new HarmonyOption(harmony, 0)));
        return LeftHandFit.of(wanted, harmony, LeftHandSound.chord(PitchClass.parse(root), third));
    }

    @Test
    void rootIsExactAndFifthStandsIn() {
        assertEquals(LeftHandFit.EXACT, bass(ChordTone.ROOT, G, "G"));
        assertEquals(LeftHandFit.FIFTH, bass(ChordTone.ROOT, G, "D"));
        assertNull(bass(ChordTone.ROOT, G, "C"));
    }

    @Test
    void patternThatWantsTheFifthGetsItOrElseTheRoot() {
        assertEquals(LeftHandFit.EXACT, bass(ChordTone.FIFTH, G, "D"));
        assertEquals(LeftHandFit.PLAIN_ROOT, bass(ChordTone.FIFTH, G, "G"));
        assertEquals(LeftHandFit.EXACT, bass(ChordTone.THIRD, G, "B"));
    }

    /** S18, "Bellows and Strings": A minor is the A bass with the c chord. */
    @Test
    void crossChordOfAMinorChordIsItsRelative() {
        assertEquals(LeftHandFit.EXACT, bass(ChordTone.ROOT, A_MINOR, "A"));
        assertEquals(LeftHandFit.RELATIVE, chord(A_MINOR, "C", Third.MAJOR));
    }

    /** Under a passing note of a G harmony everybody pulls the D bass, nobody the E minor chord: common practice. */
    @Test
    void relativeMinorDoesNotStandInForAMajorChord() {
        assertNull(chord(G, "E", Third.MINOR));
    }

    @Test
    void chordWithTheWrongThirdDoesNot() {
        assertNull(chord(A_MINOR, "A", Third.MAJOR));
        assertEquals(LeftHandFit.EXACT, chord(A_MINOR, "A", Third.NONE));
    }
}
