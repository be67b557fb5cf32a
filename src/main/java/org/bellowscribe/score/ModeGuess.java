package org.bellowscribe.score;

import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.PitchClass;

/** Guesses the mode of a key signature that names none. */
public final class ModeGuess {

    private ModeGuess() {}

    /**
     * Returns the mode whose tonic is the last note of the melody, if it is one of the four that folk tunes use (major,
     * minor, dorian, mixolydian), else major. Common practice, no source: tunes end on their tonic.
     *
     * @param fifths sharps in the signature, flats if negative
     * @param last last note of the melody
     */
    public static Mode of(int fifths, PitchClass last) {
        int aboveMajorTonic = last.above(PitchClass.of(7 * fifths));
        for (Mode mode : new Mode[] {Mode.MINOR, Mode.DORIAN, Mode.MIXOLYDIAN}) {
            if (mode.tonicAboveMajor() == aboveMajorTonic) {
                return mode;
            }
        }
        return Mode.MAJOR;
    }
}
