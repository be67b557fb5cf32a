package org.bellowscribe.accompaniment;

import java.util.List;
import java.util.Set;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.PitchClass;

/**
 * The chords that dance tunes and songs use in a key, each with a price for how rarely it is wanted: the home chord
 * first, then dominant and subdominant, in the modes the chord a tone below home, then the rest (common practice, no
 * source; weighed on half of the tunes with chord symbols).
 */
final class KeyChords {

    /**
     * A chord of a key.
     *
     * @param chord the chord
     * @param price in points, 0 for the home chord
     */
    record Priced(ChordSymbol chord, double price) {}

    private static final Set<Integer> SCALE = Set.of(0, 2, 4, 5, 7, 9, 11);

    private KeyChords() {}

    /** Returns the chords of a key, the home chord first. */
    static List<Priced> of(Key key) {
        PitchClass home = key.tonic();
        return switch (key.mode()) {
            case MAJOR, LYDIAN ->
                List.of(
                        major(home, 0, 0),
                        major(home, 7, 2),
                        major(home, 5, 2),
                        minor(home, 9, 6),
                        minor(home, 2, 10),
                        major(home, 2, 8),
                        minor(home, 4, 10));
            case MIXOLYDIAN ->
                List.of(
                        major(home, 0, 0),
                        major(home, 10, 2),
                        major(home, 5, 2),
                        major(home, 7, 4),
                        minor(home, 7, 6),
                        minor(home, 2, 8),
                        minor(home, 9, 8));
            case DORIAN ->
                List.of(
                        minor(home, 0, 0),
                        major(home, 10, 2),
                        major(home, 5, 6),
                        major(home, 3, 6),
                        minor(home, 7, 6),
                        major(home, 7, 8),
                        minor(home, 2, 10));
            case MINOR, PHRYGIAN, LOCRIAN ->
                List.of(
                        minor(home, 0, 0),
                        major(home, 10, 2),
                        major(home, 3, 4),
                        major(home, 7, 4),
                        minor(home, 5, 4),
                        major(home, 8, 4),
                        minor(home, 7, 6));
        };
    }

    /** Returns true if the signature of a key has a note. */
    static boolean hasInScale(Key key, PitchClass note) {
        return SCALE.contains(note.above(new Key(key.fifths(), Mode.MAJOR).tonic()));
    }

    private static Priced major(PitchClass home, int above, double price) {
        return new Priced(ChordSymbol.major(home.plus(above)), price);
    }

    private static Priced minor(PitchClass home, int above, double price) {
        return new Priced(ChordSymbol.minor(home.plus(above)), price);
    }
}
