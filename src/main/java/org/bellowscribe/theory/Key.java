package org.bellowscribe.theory;

/**
 * A key: its signature and mode.
 *
 * @param fifths sharps in the signature, flats if negative; -7 to 7 in practice
 * @param mode the mode
 */
public record Key(int fifths, Mode mode) {

    /** Returns the tonic. */
    public PitchClass tonic() {
        return PitchClass.of(7 * fifths + mode.tonicAboveMajor());
    }
}
