package org.bellowscribe.theory;

/**
 * An interval upward (downward if negative) with its spelling: a diminished fourth is not a major third.
 *
 * @param semitones size in semitones
 * @param fifths the same interval on the line of fifths (F, C, G, D, ...): how many places the note moves; 7 times this
 *     differs from the semitones by whole octaves
 */
public record Interval(int semitones, int fifths) {

    private static final int OCTAVE = 12;

    /** Checks that both say the same. */
    public Interval {
        if (Math.floorMod(7 * fifths - semitones, OCTAVE) != 0) {
            throw new IllegalArgumentException(
                    "The fifths (%d) must make the semitones (%d) but for octaves.".formatted(fifths, semitones));
        }
    }

    /**
     * Returns the interval that takes a key signature to the one with the fewest sharps or flats; of two such signatures
     * the one that moves it less. Octaves keep the signature.
     *
     * @param signature sharps of the signature to move, flats if negative
     * @param semitones size in semitones
     */
    public static Interval simplest(int signature, int semitones) {
        Interval best = nearest(semitones);
        if (semitones % OCTAVE == 0) {
            return best;
        }
        for (int more : new int[] {-OCTAVE, OCTAVE}) {
            Interval other = new Interval(semitones, best.fifths + more);
            boolean simpler = Math.abs(signature + other.fifths) < Math.abs(signature + best.fifths);
            best = simpler ? other : best;
        }
        return best;
    }

    private static Interval nearest(int semitones) {
        return new Interval(semitones, Math.floorMod(7 * semitones + 5, OCTAVE) - 5);
    }

    /** Returns how many letters the note moves: 7 for an octave. */
    public int steps() {
        // A fifth moves four letters, an octave seven.
        return 4 * fifths + 7 * ((semitones - 7 * fifths) / OCTAVE);
    }
}
