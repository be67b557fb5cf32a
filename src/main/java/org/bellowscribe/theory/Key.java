package org.bellowscribe.theory;

/**
 * A key: its signature and mode.
 *
 * @param fifths sharps in the signature, flats if negative; -7 to 7 in practice
 * @param mode the mode
 */
public record Key(int fifths, Mode mode) {

    private static final int MANY = 5;

    /** Returns the tonic. */
    public PitchClass tonic() {
        return PitchClass.of(7 * fifths + mode.tonicAboveMajor());
    }

    /** Returns a name such as {@code G} or {@code A dorian}; a major key is named by its tonic alone. */
    public String name() {
        return mode == Mode.MAJOR ? tonicName() : tonicName() + " " + mode.label();
    }

    /** Returns the name of the tonic as the signature spells it, such as {@code Ab} or {@code C#}. */
    public String tonicName() {
        // A fifth is its own inverse: 7 times 7 is 1 in steps of an octave. Lydian lies a fifth below major.
        int aboveMajor = Math.floorMod(7 * mode.tonicAboveMajor(), 12);
        int place = fifths + (aboveMajor == 11 ? -1 : aboveMajor) + 1;
        int accidentals = Math.floorDiv(place, 7);
        return "FCGDAEB".charAt(Math.floorMod(place, 7)) + (accidentals < 0 ? "b" : "#").repeat(Math.abs(accidentals));
    }

    /** Returns the signature in words, such as {@code 6 flats}. */
    public String signs() {
        int count = Math.abs(fifths);
        return "%d %s%s".formatted(count, fifths < 0 ? "flat" : "sharp", count == 1 ? "" : "s");
    }

    /** Tells whether the signature has more signs than most players read. */
    public boolean hasManySigns() {
        return Math.abs(fifths) > MANY;
    }
}
