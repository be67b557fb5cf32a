package org.bellowscribe.instrument.file;

import java.util.Comparator;

/**
 * The place of a button in its row or column.
 *
 * @param line number of the row or column, from 1
 * @param number number of the button, from 1
 */
record GridPlace(int line, int number) implements Comparable<GridPlace> {

    private static final Comparator<GridPlace> ORDER =
            Comparator.comparingInt(GridPlace::line).thenComparingInt(GridPlace::number);

    @Override
    public int compareTo(GridPlace other) {
        return ORDER.compare(this, other);
    }
}
