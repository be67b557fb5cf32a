package org.bellowscribe.annotation;

import org.bellowscribe.theory.Fraction;

/**
 * Words above a part.
 *
 * @param onset time from the start of the measure; never within a note
 * @param text text, never empty
 */
public record PartWords(Fraction onset, String text) {}
