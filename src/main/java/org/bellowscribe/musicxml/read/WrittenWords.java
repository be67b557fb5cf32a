package org.bellowscribe.musicxml.read;

import org.bellowscribe.theory.Fraction;

/**
 * Words of a direction.
 *
 * @param onset time from the start of its measure
 * @param text the words
 */
record WrittenWords(Fraction onset, String text) {}
