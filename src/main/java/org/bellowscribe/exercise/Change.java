package org.bellowscribe.exercise;

import java.util.Locale;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.Step;

/** What the right hand and the bellows do from one note to the next; of several the hardest counts. */
public enum Change {
    /** The same button the same way. */
    SAME_BUTTON,
    /** A button next to it on the row. */
    NEIGHBOR_BUTTON,
    /** Another button of the row. */
    OTHER_BUTTON,
    /** The button stays down and the bellows turn. */
    HELD_REVERSAL,
    /** The bellows turn, and another button of the row is pressed. */
    REVERSAL,
    /** Another row, the bellows going on. */
    ROW_CHANGE,
    /** Another row, and the bellows turn. */
    ROW_CHANGE_WITH_REVERSAL,
    /** The hand moves along the rows. */
    SHIFT;

    /** Returns the id: kebab-case. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns the change between two notes that both have buttons. */
    public static Change between(Step from, Step to) {
        if (to.isMovedFrom(from)) {
            return SHIFT;
        }
        Button before = from.buttons().get(0);
        Button after = to.buttons().get(0);
        boolean turns = from.direction() != to.direction();
        if (before.row() != after.row()) {
            return turns ? ROW_CHANGE_WITH_REVERSAL : ROW_CHANGE;
        }
        if (turns) {
            return before.equals(after) ? HELD_REVERSAL : REVERSAL;
        }
        int way = Math.abs(before.number() - after.number());
        return way == 0 ? SAME_BUTTON : way == 1 ? NEIGHBOR_BUTTON : OTHER_BUTTON;
    }
}
