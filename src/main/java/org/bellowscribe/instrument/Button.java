package org.bellowscribe.instrument;

import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/**
 * A melody button.
 *
 * @param row 1 is the outer row, away from the bellows
 * @param number 1 is nearest the chin
 * @param push pitch on the push, or null if it is silent
 * @param pull pitch on the pull, or null if it is silent
 */
public record Button(
        int row, int number, @Nullable Pitch push, @Nullable Pitch pull) {

    /** Returns the pitch in a direction, or null if the button is silent there. */
    public @Nullable Pitch pitch(BellowsDirection direction) {
        return direction == BellowsDirection.PUSH ? push : pull;
    }

    /** Returns {@code row.number}, such as {@code 2.5}. */
    public String id() {
        return row + "." + number;
    }
}
