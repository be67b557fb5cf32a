package org.bellowscribe.marking;

import org.jspecify.annotations.Nullable;

/**
 * What a teacher fixes and asks.
 *
 * @param keepsPins false if all pins are passed over
 * @param keepsEdits true if every mark that was changed by hand is kept, false if only those with the sign
 * @param question what to explain; null for nothing
 * @param alternatives how many other ways to play each tune are to be looked for, 0 or more
 */
public record Steering(
        boolean keepsPins, boolean keepsEdits, @Nullable Question question, int alternatives) {

    /** All pins, and no question. */
    public static final Steering USUAL = new Steering(true, false, null, 0);

    /**
     * A question why something is played and nothing else.
     *
     * @param measure name of the measure
     * @param note which of its notes, or of its rests, from 1; 0 for all of both
     * @param rest true if it is a rest
     */
    public record Question(String measure, int note, boolean rest) {}
}
