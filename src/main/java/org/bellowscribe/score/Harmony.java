package org.bellowscribe.score;

import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/**
 * A chord symbol of the score; it holds until the next one.
 *
 * @param measure 0-based index of its measure
 * @param onset time from the start of that measure
 * @param chord the chord in sounding pitch, or null for "no chord"
 */
public record Harmony(int measure, Fraction onset, @Nullable ChordSymbol chord) {}
