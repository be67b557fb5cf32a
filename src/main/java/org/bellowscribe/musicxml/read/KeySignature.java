package org.bellowscribe.musicxml.read;

import org.bellowscribe.theory.Mode;
import org.jspecify.annotations.Nullable;

/**
 * A key signature as it sounds.
 *
 * @param fifths sharps, flats if negative, after transposition
 * @param mode the mode, or null if the score names none
 */
record KeySignature(int fifths, @Nullable Mode mode) {}
