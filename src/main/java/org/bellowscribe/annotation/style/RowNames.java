package org.bellowscribe.annotation.style;

/**
 * Names of the rows of melody buttons.
 *
 * @param outer the row away from the bellows, of two or three
 * @param middle the middle one of three
 * @param inner the row next to the bellows, of two or three
 * @param other any row of more than three; place {@code {row}}
 */
public record RowNames(String outer, String middle, String inner, Template other) {

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
}
