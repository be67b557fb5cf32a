package org.bellowscribe.theory;

/**
 * How a pitch class is written in a key: as the note that lies nearest to it on the line of fifths, from four fifths
 * below the tonic of the major key to seven above, so that C major has Ab, Eb, Bb, F# and C#.
 *
 * @param place place on the line of fifths: C is 0, G is 1, F is -1
 */
public record Spelling(int place) {

    private static final int OCTAVE = 12;
    private static final int LOWEST = -4;
    private static final int FIFTH = 1;
    private static final int MAJOR_THIRD = 4;
    private static final int MINOR_THIRD = -3;

    /**
     * Spells a pitch class.
     *
     * @param fifths sharps of the key signature, flats if negative
     */
    public static Spelling of(PitchClass pitchClass, int fifths) {
        int lowest = fifths + LOWEST;
        // A fifth is its own inverse: 7 times 7 is 1 in steps of an octave.
        return new Spelling(lowest + Math.floorMod(7 * pitchClass.semitone() - lowest, OCTAVE));
    }

    /** Returns the fifth above. */
    public Spelling fifth() {
        return new Spelling(place + FIFTH);
    }

    /** Returns the third above. */
    public Spelling third(boolean minor) {
        return new Spelling(place + (minor ? MINOR_THIRD : MAJOR_THIRD));
    }

    /** Returns the letter, A to G. */
    public char letter() {
        return "FCGDAEB".charAt(Math.floorMod(place + 1, 7));
    }

    /** Returns the semitones that accidentals add, negative for flats. */
    public int alter() {
        return Math.floorDiv(place + 1, 7);
    }

    /** Returns the lowest note of this name that is not below a pitch, in semitones as in {@link Pitch}. */
    public NoteName from(int midiNumber) {
        int semitone = PitchClass.semitoneOf(letter()) + alter();
        int pitch = midiNumber + Math.floorMod(semitone - midiNumber, OCTAVE);
        return new NoteName(letter(), alter(), (pitch - semitone) / OCTAVE - 1);
    }
}
