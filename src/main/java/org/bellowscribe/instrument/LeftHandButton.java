package org.bellowscribe.instrument;

import org.jspecify.annotations.Nullable;

/**
 * A left-hand button.
 *
 * @param column 1 is the outer column
 * @param number 1 is nearest the chin
 * @param push sound on the push, or null if it is silent
 * @param pull sound on the pull, or null if it is silent
 */
public record LeftHandButton(
        int column,
        int number,
        @Nullable LeftHandSound push,
        @Nullable LeftHandSound pull) {

    /** Returns the sound in a direction, or null if the button is silent there. */
    public @Nullable LeftHandSound sound(BellowsDirection direction) {
        return direction == BellowsDirection.PUSH ? push : pull;
    }

    /** Returns {@code column.number}, such as {@code 2.1}. */
    public String id() {
        return column + "." + number;
    }
}
