package org.bellowscribe.annotation;

/**
 * A text below a note of a part of ours.
 *
 * @param line name of the lyric line, such as {@code left-hand}; the lines of a part stand in the order of their numbers
 * @param number 1 for the uppermost line
 * @param text text, never empty
 */
public record PartSyllable(String line, int number, String text) {}
