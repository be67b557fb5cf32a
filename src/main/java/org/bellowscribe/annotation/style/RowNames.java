package org.bellowscribe.annotation.style;

import java.util.Arrays;
import java.util.List;

/**
 * Names of the rows of melody buttons.
 *
 * @param outer the row away from the bellows, of two or three
 * @param middle the middle one of three
 * @param inner the row next to the bellows, of two or three
 * @param other any row of more than three; place {@code {row}}
 */
public record RowNames(String outer, String middle, String inner, Template other) {

    private static final String BETWEEN_LINES = "/";

    /**
     * Returns the name of a row.
     *
     * @param row 1 is the outer row
     * @param rows number of rows of the instrument
     * @return the name, or empty if there is only one row
     */
    public String name(int row, int rows) {
        if (rows < 2) {
            return "";
        }
        if (rows > 3) {
            return other.with("row", row);
        }
        return row == 1 ? outer : row == rows ? inner : middle;
    }

    /**
     * Returns the names of rows that have a line each, as {@code outer/inner}.
     *
     * @param lines the rows from the top line down
     * @param rows number of rows of the instrument
     */
    public String ofLines(List<Integer> lines, int rows) {
        return String.join(
                BETWEEN_LINES, lines.stream().map(row -> name(row, rows)).toList());
    }

    /** Returns true if words are the names of rows, of one or of several lines. */
    public boolean areNames(String words) {
        return Arrays.stream(words.split(BETWEEN_LINES, -1))
                .allMatch(name ->
                        name.equals(outer) || name.equals(middle) || name.equals(inner) || other.read(name) != null);
    }
}
