package org.bellowscribe.marking;

/**
 * A file that goes beside a marked score.
 *
 * @param ending what stands behind the name of the score without its ending, such as {@code .both.musicxml}
 * @param bytes what is in it
 */
public record BesideSheet(String ending, byte[] bytes) {}
