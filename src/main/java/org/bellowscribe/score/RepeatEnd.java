package org.bellowscribe.score;

/**
 * The sign at the end of a measure that sends the player back.
 *
 * @param times how often the repeated section sounds in all, 2 where nothing is said; 1 or more
 * @param afterJump true if the repeat is also taken after a da capo or dal segno
 */
public record RepeatEnd(int times, boolean afterJump) {

    /** The usual sign: twice, and not after a jump. */
    public static final RepeatEnd TWICE = new RepeatEnd(2, false);
}
