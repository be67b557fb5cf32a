package org.bellowscribe.marking;

import org.bellowscribe.theory.KeyName;
import org.jspecify.annotations.Nullable;

/**
 * In which key to play a tune.
 *
 * @param semitones how much higher than written, lower if negative; null for the nearest key that can be played
 * @param keepsNotes true if the sheet keeps its notes, as that of a transposing instrument does
 * @param name the key in which the tune begins, in the octave nearest to the sheet; null if the semitones decide
 */
public record KeyChoice(
        @Nullable Integer semitones,
        boolean keepsNotes,
        @Nullable KeyName name) {

    /** The key of the sheet. */
    public static final KeyChoice AS_WRITTEN = new KeyChoice(0, false);

    /** The most semitones that a tune can be moved either way. */
    public static final int MOST_SEMITONES = 24;

    /** Chooses by semitones. */
    public KeyChoice(@Nullable Integer semitones, boolean keepsNotes) {
        this(semitones, keepsNotes, null);
    }

    /** Tells whether any key will do. */
    boolean isAnyKey() {
        return semitones == null && name == null;
    }

    /** Checks the range. */
    public KeyChoice {
        if (semitones != null && Math.abs(semitones) > MOST_SEMITONES) {
            throw new IllegalArgumentException(
                    "The semitones (%d) must be from -%d to %d.".formatted(semitones, MOST_SEMITONES, MOST_SEMITONES));
        }
    }
}
