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

    /** Words that are to stand below their note. */
    public static final String WORDS = "words";

    private static final String ROW = "row-";

    private MarkLines() {}

    /** Returns what the texts of a line fix; null if they fix nothing. */
    public static @Nullable MarkAspect aspect(String line) {
        if (line.equals(LEFT_HAND)) {
            return MarkAspect.LEFT_HAND;
        }
        return line.equals(BUTTONS) || direction(line) != null || row(line) > 0 ? MarkAspect.BUTTONS : null;
    }

    /**
     * Returns what the line of one row of buttons is called.
     *
     * @param row 1 is the outer row
     */
    public static String ofRow(int row) {
        return ROW + row;
    }

    /** Returns the row of a line of buttons for one row; 0 for any other line. */
    public static int row(String line) {
        return line.matches(ROW + "[1-9]") ? line.charAt(ROW.length()) - '0' : 0;
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
