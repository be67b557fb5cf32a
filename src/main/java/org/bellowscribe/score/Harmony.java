package org.bellowscribe.score;

import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/**
 * A chord symbol of the score; it holds until the next one.
 *
 * @param measure 0-based index of its measure
 * @param onset time from the start of that measure
 * @param chord the chord in sounding pitch, or null for "no chord" or where none is written
 * @param unwritten true if from here the score says nothing, and a harmony is to be found
 */
public record Harmony(int measure, Fraction onset, @Nullable ChordSymbol chord, boolean unwritten) {

    /** Creates a chord symbol. */
    public Harmony(int measure, Fraction onset, @Nullable ChordSymbol chord) {
        this(measure, onset, chord, false);
    }

    /** Returns the start of measures without chord symbols. */
    public static Harmony unwrittenFrom(int measure) {
        return new Harmony(measure, Fraction.ZERO, null, true);
    }
}
