package org.bellowscribe.theory;

import java.util.Locale;

/** A mode, with the distance of its tonic from the tonic of the major key with the same signature. */
public enum Mode {
    /** Major. */
    MAJOR(0),
    /** Minor, the same as aeolian. */
    MINOR(9),
    /** Dorian. */
    DORIAN(2),
    /** Phrygian. */
    PHRYGIAN(4),
    /** Lydian. */
    LYDIAN(5),
    /** Mixolydian. */
    MIXOLYDIAN(7),
    /** Locrian. */
    LOCRIAN(11);

    private final int tonicAboveMajor;

    Mode(int tonicAboveMajor) {
        this.tonicAboveMajor = tonicAboveMajor;
    }

    /** Returns how many semitones the tonic lies above the tonic of the major key with the same signature. */
    public int tonicAboveMajor() {
        return tonicAboveMajor;
    }

    /** Returns the name in small letters, such as {@code dorian}. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
