package org.bellowscribe.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Intervals and keys against the tables of every book of rudiments: the circle of fifths, common practice. */
class IntervalTest {

    /** Names of the major keys by signature, seven flats to seven sharps. */
    private static final List<String> MAJOR =
            List.of("Cb", "Gb", "Db", "Ab", "Eb", "Bb", "F", "C", "G", "D", "A", "E", "B", "F#", "C#");

    /** Names of the minor keys by signature, seven flats to seven sharps. */
    private static final List<String> MINOR =
            List.of("Ab", "Eb", "Bb", "F", "C", "G", "D", "A", "E", "B", "F#", "C#", "G#", "D#", "A#");

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        // interval, semitones, letters moved, above C4, above F#4
        "minor second, 1, 1, Db4, G4",
        "major second, 2, 1, D4, G#4",
        "minor third, 3, 2, Eb4, A4",
        "major third, 4, 2, E4, A#4",
        "perfect fourth, 5, 3, F4, B4",
        "augmented fourth, 6, 3, F#4, B#4",
        "diminished fifth, 6, 4, Gb4, C5",
        "perfect fifth, 7, 4, G4, C#5",
        "minor sixth, 8, 5, Ab4, D5",
        "major sixth, 9, 5, A4, D#5",
        "minor seventh, 10, 6, Bb4, E5",
        "major seventh, 11, 6, B4, E#5",
        "octave, 12, 7, C5, F#5",
        "augmented second, 3, 1, D#4, G##4",
        "diminished fourth, 4, 3, Fb4, Bb4",
        "minor second down, -1, -1, B3, E#4",
        "major second down, -2, -1, Bb3, E4",
        "minor third down, -3, -2, A3, D#4",
        "perfect fourth down, -5, -3, G3, C#4",
        "perfect fifth down, -7, -4, F3, B3",
        "octave down, -12, -7, C3, F#3",
    })
    void intervalsSpellAsInTheTable(String name, int semitones, int letters, String aboveC, String aboveFSharp) {
        Interval interval = of(semitones, letters);
        assertEquals(aboveC, new NoteName('C', 0, 4).plus(interval).toString());
        assertEquals(aboveFSharp, new NoteName('F', 1, 4).plus(interval).toString());
    }

    @Test
    void noteOfMoreThanTwoAccidentalsTakesAnotherLetter() {
        assertEquals("A#4", new NoteName('F', 2, 4).plus(new Interval(3, 9)).toString());
        assertEquals("Ab4", new NoteName('B', -2, 4).plus(of(-1, 0)).toString());
    }

    @Test
    void fifthsAndSemitonesMustAgree() {
        assertThrows(IllegalArgumentException.class, () -> new Interval(1, 1));
    }

    @ParameterizedTest(name = "{0} + {1} = {2}")
    @CsvSource({
        "C, 1, Db",
        "C, 2, D",
        "C, 3, Eb",
        "C, 4, E",
        "C, 5, F",
        "C, 7, G",
        "C, 8, Ab",
        "C, 9, A",
        "C, 10, Bb",
        "C, 11, B",
        "C, 12, C",
        "G, 1, Ab",
        "G, 2, A",
        "G, 3, Bb",
        "G, 4, B",
        "G, 5, C",
        "G, 6, Db",
        "G, 7, D",
        "G, 8, Eb",
        "G, 9, E",
        "G, 10, F",
        "D, 1, Eb",
        "D, 2, E",
        "D, 3, F",
        "D, 5, G",
        "D, 6, Ab",
        "D, 7, A",
        "D, 8, Bb",
        "D, 9, B",
        "D, 10, C",
        "D, 11, Db",
        "A, 1, Bb",
        "A, 2, B",
        "A, 3, C",
        "A, 5, D",
        "F, 2, G",
        "F, 5, Bb",
        "F, -3, D",
        "Bb, 2, C",
        "Bb, -3, G",
        "Eb, -1, D",
        "E, -2, D",
        "E, 1, F",
        "A, 6, Eb",
        "E, 6, Bb",
        "B, 1, C",
        "Ab, 1, A",
        "Ab, 4, C",
        "Bb, 6, E",
        "F, 6, B",
        "Eb, 6, A",
    })
    void majorKeysMoveToTheKeyOfFewestAccidentals(String from, int semitones, String to) {
        int signature = MAJOR.indexOf(from) - 7;
        int moved = KeyMove.of(List.of(signature), semitones).signature(signature);
        assertEquals(to, MAJOR.get(moved + 7));
        assertEquals(to, new Key(moved, Mode.MAJOR).tonicName());
    }

    @ParameterizedTest(name = "{0} + {1} = {2}")
    @CsvSource({
        "A, 2, B",
        "A, 5, D",
        "A, 7, E",
        "A, 1, Bb",
        "A, -1, G#",
        "E, 3, G",
        "E, -2, D",
        "D, -2, C",
        "D, 2, E",
        "B, 1, C",
        "G, 2, A",
        "F#, 1, G",
        "C, 2, D",
        "E, 12, E",
    })
    void minorKeysMoveToTheKeyOfFewestAccidentals(String from, int semitones, String to) {
        int signature = MINOR.indexOf(from) - 7;
        int moved = KeyMove.of(List.of(signature), semitones).signature(signature);
        assertEquals(to, MINOR.get(moved + 7));
    }

    /** The line of fifths has 12 keys in an octave: up and down again must be the same key, by name or by sound. */
    @Test
    void everyKeyMovesByEveryStepWithinSevenAccidentals() {
        for (int signature = -7; signature <= 7; signature++) {
            for (int semitones = -12; semitones <= 12; semitones++) {
                int moved = KeyMove.of(List.of(signature), semitones).signature(signature);
                assertEquals(0, Math.floorMod(7 * (moved - signature) - semitones, 12));
                int most = semitones % 12 == 0 ? Math.abs(signature) : 6;
                assertTrue(Math.abs(moved) <= most, "six accidentals are enough for every key");
            }
        }
    }

    @Test
    void allKeysOfATuneMoveByOneIntervalWhereItSuits() {
        KeyMove move = KeyMove.of(List.of(2, 3, 1), 4);
        assertEquals(List.of(6, 7, 5), List.of(move.signature(2), move.signature(3), move.signature(1)));
    }

    @Test
    void keyThatWouldHaveMoreThanSevenAccidentalsIsSpelledByItself() {
        KeyMove move = KeyMove.of(List.of(-3, 3), 6);
        assertEquals(List.of(3, -3), List.of(move.signature(-3), move.signature(3)));
    }

    private static Interval of(int semitones, int letters) {
        for (int fifths = -12; fifths <= 12; fifths++) {
            if (Math.floorMod(7 * fifths - semitones, 12) == 0) {
                Interval interval = new Interval(semitones, fifths);
                if (interval.steps() == letters) {
                    return interval;
                }
            }
        }
        throw new AssertionError(semitones + " semitones, " + letters + " letters");
    }
}
