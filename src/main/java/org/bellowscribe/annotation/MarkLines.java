package org.bellowscribe.annotation;

import org.bellowscribe.instrument.BellowsDirection;
import org.jspecify.annotations.Nullable;

/** What the lyric lines that a hand can fix are called. */
public final class MarkLines {

    /** Buttons of both directions. */
    public static final String BUTTONS = "buttons";

    /** The left hand. */
    public static final String LEFT_HAND = "left-hand";

    /** The fingers of the left hand. */
    public static final String LEFT_HAND_FINGERS = "left-hand-fingers";

    private MarkLines() {}

    /** Returns what the texts of a line fix; null if they fix nothing. */
    public static @Nullable MarkAspect aspect(String line) {
        if (line.equals(LEFT_HAND)) {
            return MarkAspect.LEFT_HAND;
        }
        return line.equals(BUTTONS) || direction(line) != null ? MarkAspect.BUTTONS : null;
    }

    /** Returns the direction of a line of buttons for one direction; null for any other line. */
    public static @Nullable BellowsDirection direction(String line) {
        for (BellowsDirection direction : BellowsDirection.values()) {
            if (direction.label().equals(line)) {
                return direction;
            }
        }
        return null;
    }
}
