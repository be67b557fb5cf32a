package org.bellowscribe.instrument;

import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Pitch;

/**
 * How far an instrument can play in a key.
 *
 * @param key signature and mode
 * @param lowest lowest note of the longest run of neighboring notes of the scale that all have buttons, in either
 *     direction
 * @param highest highest note of that run
 * @param octaves whole octaves from tonic to tonic inside the run, 1 or more
 * @param tonic where the left hand sounds the first degree
 * @param subdominant where the left hand sounds the fourth degree
 * @param dominant where the left hand sounds the fifth degree
 */
public record KeyRange(
        Key key,
        Pitch lowest,
        Pitch highest,
        int octaves,
        DegreeBasses tonic,
        DegreeBasses subdominant,
        DegreeBasses dominant) {

    /** Returns how well the left hand supports the key: 0 to 6, 2 for each of the three degrees with its chord. */
    public int support() {
        return tonic.support() + subdominant.support() + dominant.support();
    }

    /** Returns the name of the key, such as {@code E dorian}. */
    public String name() {
        return key.tonicName() + " " + key.mode().label();
    }
}
