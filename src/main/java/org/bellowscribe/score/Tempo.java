package org.bellowscribe.score;

import org.bellowscribe.theory.Fraction;

/**
 * How fast the tune goes; one tempo for the whole tune.
 *
 * @param quartersPerMinute quarter notes per minute, more than 0
 * @param stated true if the score says so, false if it is the usual tempo of the dance
 */
public record Tempo(double quartersPerMinute, boolean stated) {

    /** Returns how long a musical time lasts, in seconds. */
    public double seconds(Fraction quarters) {
        return quarters.toDouble() * 60 / quartersPerMinute;
    }
}
