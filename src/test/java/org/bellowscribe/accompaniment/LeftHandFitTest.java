package org.bellowscribe.accompaniment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.Set;
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
        return bass(tone, harmony, sounding, Set.of());
    }

    private static @Nullable LeftHandFit bass(
            ChordTone tone, ChordSymbol harmony, String sounding, Set<PitchClass> over) {
        WantedSound wanted = new WantedSound(
                0,
                Fraction.ZERO,
                Fraction.QUARTER,
                LeftHandKind.BASS,
                tone,
                false,
                List.of(new HarmonyOption(harmony, 0)),
                over);
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

    /** Where the push has the G, the pull has E minor: two teachers take it on most such beats. */
    @Test
    void relativeMinorStandsInForAMajorChord() {
        Set<PitchClass> melody = Set.of(PitchClass.parse("A"));
        assertEquals(LeftHandFit.RELATIVE_MINOR, bass(ChordTone.ROOT, G, "E", melody));
    }

    @Test
    void nothingStandsInForAMajorChordByItsRelativeMinorWhereTheLeftHandIsWrittenOut() {
        assertNull(bass(ChordTone.ROOT, G, "E"));
        assertNull(chord(G, "E", Third.MINOR));
    }

    @Test
    void soundOfAnotherHarmonyGoesWithTheMelodyNoteItHas() {
        ChordSymbol a = ChordSymbol.major(PitchClass.parse("A"));
        LeftHandSound d = LeftHandSound.chord(PitchClass.parse("D"), Third.MAJOR);
        assertEquals(LeftHandFit.WITH_MELODY, LeftHandFit.of(under("F#"), a, d));
        assertNull(LeftHandFit.of(under("G"), a, d));
    }

    private static WantedSound under(String melody) {
        List<HarmonyOption> any = List.of(new HarmonyOption(G, 0));
        return new WantedSound(
                0,
                Fraction.ZERO,
                Fraction.QUARTER,
                LeftHandKind.CHORD,
                ChordTone.ROOT,
                false,
                any,
                Set.of(PitchClass.parse(melody)));
    }

    @Test
    void chordWithTheWrongThirdDoesNot() {
        assertNull(chord(A_MINOR, "A", Third.MAJOR));
        assertEquals(LeftHandFit.EXACT, chord(A_MINOR, "A", Third.NONE));
    }
}
