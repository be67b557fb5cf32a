package org.bellowscribe.accompaniment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

class HarmonyFinderTest {

    private static final Set<PitchClass> ALL =
            IntStream.range(0, 12).mapToObj(PitchClass::of).collect(Collectors.toSet());
    private static final TimeSignature WALTZ_TIME = new TimeSignature(3, 4);

    private static List<HarmonyOption> options(Tune tune, int measure) {
        return finder(tune, ALL).options(tune.measures().get(measure), Fraction.ZERO);
    }

    private static HarmonyFinder finder(Tune tune, Set<PitchClass> roots) {
        return new HarmonyFinder(tune, roots, tune.measures().size() - 1);
    }

    private static String best(Tune tune) {
        return tune.measures().stream()
                .map(measure -> options(tune, measure.index()).get(0).chord().toString())
                .collect(Collectors.joining(" "));
    }

    @Test
    void brokenChordsAreTheirHarmony() {
        Tune tune = TuneText.of("D4 F#4 A4 D5 | G4 B4 D5 G5 | A4 C#5 E5 A4 | D5 A4 F#4 D4");
        assertEquals("D G A D", best(tune));
    }

    @Test
    void passingNoteDoesNotChangeTheHarmony() {
        Tune tune = TuneText.of("D4 E4 F#4 G4 | A4 F#4 D4 A4 | F#4 G4 A4 F#4 | D4*4");
        assertEquals("D D D D", best(tune));
    }

    @Test
    void tuneCloses() {
        Tune tune = TuneText.of("D4 F#4 A4 D5 | A4 C#5 E5 A4 | D5*2 A4*2");
        List<HarmonyOption> last = finder(tune, ALL).options(tune.measures().get(2), Fraction.of(2, 1));
        assertEquals(1, last.size());
        assertEquals("D", last.get(0).chord().toString());
    }

    /** The signature of G that a score calls G major; the melody is one in E minor. */
    @Test
    void modeOfTheMelodyIsHeard() {
        Key called = new Key(1, Mode.MAJOR);
        Tune tune = TuneText.of("E4 G4 B4 | E5 B4 G4 | B4 E4 E4 | E4*3", 150, WALTZ_TIME, called);
        assertEquals("Em Em Em Em", best(tune));
    }

    /** In A mixolydian, D and its neighbours are D, as they would be in A major, not the chord below home. */
    @Test
    void subdominantIsAsUsualInMixolydianAsInMajor() {
        Key mixolydian = new Key(2, Mode.MIXOLYDIAN);
        Tune tune =
                TuneText.of("D5*2 C#5 D5 | D5*3 F#5 | E5 C#5 A4*2 | A4*4", 116, new TimeSignature(4, 4), mixolydian);
        assertEquals("D D A A", best(tune));
    }

    /** B major has D sharp: not right behind a D in its measure; where no D is heard, E minor may borrow it. */
    @Test
    void dominantBorrowsNoThirdThatTheMelodyContradicts() {
        Key minor = new Key(1, Mode.MINOR);
        TimeSignature time = new TimeSignature(2, 4);
        Tune natural = TuneText.of("E5 G5 | D5 B4*1/2 F#4*1/2 | E4 G4 | E4*2", 116, time, minor);
        assertFalse(mayBeB(natural));
        Tune silent = TuneText.of("E5 G5 | B4 B4*1/2 F#4*1/2 | E4 G4 | E4*2", 116, time, minor);
        assertTrue(mayBeB(silent));
    }

    private static boolean mayBeB(Tune tune) {
        return finder(tune, ALL).options(tune.measures().get(1), Fraction.of(1, 1)).stream()
                .anyMatch(option -> option.chord().toString().equals("B"));
    }

    @Test
    void equalMeasuresHaveEqualOptions() {
        Tune tune = TuneText.of("G4 B4 A4 C#5 | D4 F#4 A4 F#4 | G4 B4 A4 C#5 | A4 E4 C#5 A4 | D4*4");
        assertEquals(options(tune, 0), options(tune, 2));
    }

    @Test
    void bestOptionCostsNothing() {
        Tune tune = TuneText.of("D4 F#4 A4 D5 | A4 C#5 E5 A4 | D5*2 A4*2");
        assertEquals(0, options(tune, 1).get(0).misfit());
        assertTrue(options(tune, 1).size() <= 4);
    }

    @Test
    void boxWithoutTheRootIsNotAskedForIt() {
        Tune tune = TuneText.of("D4 F#4 A4 D5 | G4 B4 D5 G5 | D5 A4 F#4 D4");
        Set<PitchClass> roots = Set.of(PitchClass.parse("D"), PitchClass.parse("A"));
        assertTrue(finder(tune, roots).options(tune.measures().get(1), Fraction.ZERO).stream()
                .allMatch(option -> roots.contains(option.chord().root())));
    }

    @Test
    void sectionClosesFromTheDominantWithinItsLastMeasure() {
        Tune tune = TuneText.of("D4 F#4 A4 D5 | G4 B4 D5 G5 | D5 A4 F#4 A4 | E4 C#4 D4*2");
        HarmonyFinder finder = finder(tune, ALL);
        assertEquals(
                "A",
                finder.options(tune.measures().get(3), Fraction.ZERO)
                        .get(0)
                        .chord()
                        .toString());
        assertEquals(
                "D",
                finder.options(tune.measures().get(3), Fraction.of(2, 1))
                        .get(0)
                        .chord()
                        .toString());
    }

    /** Written in C without a signature; B flats and the end say F. */
    @Test
    void lostSignatureIsHeard() {
        Key called = new Key(0, Mode.MAJOR);
        Tune tune =
                TuneText.of("F4 A4 C5 A4 | Bb4 D5 F5 D5 | C5 Bb4 G4 E4 | F4*4", 120, new TimeSignature(4, 4), called);
        assertEquals("F Bb C F", best(tune));
    }

    @Test
    void chordWithAThirdFromOutsideTheKeyIsOnlyFoundUnderThatThird() {
        Tune tune = TuneText.of("D4 F#4 A4 D5 | E5 B4 E5 B4 | C#5 E5 A4 C#5 | D5 A4 D4*2");
        assertTrue(tune.measures().stream()
                .flatMap(measure -> options(tune, measure.index()).stream())
                .noneMatch(option -> option.chord().toString().equals("E")));
    }

    /** The tune ends on A, which the home chord of G does not have. */
    @Test
    void closingNoteStandsOverItsOwnChord() {
        Key key = new Key(1, Mode.MAJOR);
        Tune tune = TuneText.of(
                "G4 B4 D5 B4 | G4 D5 B4 G4 | C5 E5 G4 E5 | B4 G4 B4 D5 | G4 B4 G4 B4 | A4*4",
                120,
                new TimeSignature(4, 4),
                key);
        assertTrue(options(tune, 5).get(0).chord().tones().contains(PitchClass.parse("A")));
    }
}
