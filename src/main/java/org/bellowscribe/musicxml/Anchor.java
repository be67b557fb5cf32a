package org.bellowscribe.musicxml;

/**
 * A place directly behind a {@code >} where an element can be put in.
 *
 * @param offset 0-based place in the text
 * @param space white space to put before the element, so that it stands like its neighbor
 */
record Anchor(int offset, String space) {}
