package org.bellowscribe.annotation.style;

import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;

/**
 * How buttons are written.
 *
 * @param lines what their lyric lines stand for
 * @param fingers true if fingers stand in place of numbers: for boxes whose numbers differ
 * @param push what is written at a pushed note; place {@code {buttons}}
 * @param pull what is written at a pulled note; place {@code {buttons}}
 * @param held a button that stays down through a reversal; place {@code {button}}
 * @param otherRows a button outside the row used most, for the first, second ... of the other rows counted from the
 *     outer row; place {@code {button}}; at least one
 * @param between what stands between two buttons of one note group
 */
public record ButtonLabels(
        ButtonLines lines,
        boolean fingers,
        Template push,
        Template pull,
        Template held,
        List<Template> otherRows,
        String between) {

    /** Copies the rows. */
    public ButtonLabels {
        otherRows = List.copyOf(otherRows);
    }

    /** Returns true if pushed and pulled notes have a line each. */
    public boolean twoLines() {
        return lines == ButtonLines.TWO;
    }

    /** Returns what is written at a note that is played in a direction. */
    public Template direction(BellowsDirection direction) {
        return direction == BellowsDirection.PUSH ? push : pull;
    }

    /**
     * Returns the number of a button outside the row used most. Beyond the rows that have a label of their own the last
     * label is put on several times.
     *
     * @param other 0-based place of the row among the other rows
     * @param number the number to write
     */
    public String otherRow(int other, String number) {
        int known = Math.min(other, otherRows.size() - 1);
        String label = number;
        for (int i = known; i <= other; i++) {
            label = otherRows.get(known).with("button", label);
        }
        return label;
    }
}
