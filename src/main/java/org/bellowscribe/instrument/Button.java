package org.bellowscribe.instrument;

import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/**
 * A melody button.
 *
 * @param row 1 is the outer row, away from the bellows
 * @param number 1 is nearest the chin; on a concertina, 1 lies under the little finger of the left hand
 * @param push pitch on the push, or null if it is silent
 * @param pull pitch on the pull, or null if it is silent
 * @param hand the hand that plays it: the right one but for concertinas and for boxes built for the left-handed
 */
public record Button(
        int row, int number, @Nullable Pitch push, @Nullable Pitch pull, Hand hand) {

    /** Creates a button for the right hand. */
    public Button(int row, int number, @Nullable Pitch push, @Nullable Pitch pull) {
        this(row, number, push, pull, Hand.RIGHT);
    }

    /** Returns the pitch in a direction, or null if the button is silent there. */
    public @Nullable Pitch pitch(BellowsDirection direction) {
        return direction == BellowsDirection.PUSH ? push : pull;
    }

    /** Returns true if another button has the same number on the next row, so that one finger can lie across both. */
    public boolean isBeside(Button other) {
        return hand == other.hand && number == other.number && Math.abs(row - other.row) == 1;
    }

    /** Returns {@code row.number}, such as {@code 2.5}. */
    public String id() {
        return row + "." + number;
    }
}
