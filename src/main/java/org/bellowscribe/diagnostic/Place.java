package org.bellowscribe.diagnostic;

/**
 * Where in a score a remark belongs. Unknown parts of the place are 0 or empty.
 *
 * @param measure 1-based index of the measure in the file; 0 if the remark is about no single measure
 * @param measureNumber printed number of the measure; empty if unknown
 * @param part id of the part; empty if unknown
 * @param line 1-based line in the file; 0 if unknown
 * @param column 1-based column in the line; 0 if unknown
 */
public record Place(int measure, String measureNumber, String part, int line, int column) {

    /** The whole file. */
    public static final Place FILE = new Place(0, "", "", 0, 0);

    /** Returns the place of a measure. */
    public static Place measure(int index, String number, String part) {
        return new Place(index, number, part, 0, 0);
    }

    /** Returns a line and column of the file. */
    public static Place line(int line, int column) {
        return new Place(0, "", "", line, column);
    }

    /** Returns words such as {@code measure 12, part P1} or {@code line 3, column 7}; empty for the whole file. */
    public String describe() {
        StringBuilder words = new StringBuilder();
        if (measure > 0) {
            words.append("measure ").append(measureNumber.isEmpty() ? String.valueOf(measure) : measureNumber);
            if (!measureNumber.isEmpty() && !measureNumber.equals(String.valueOf(measure))) {
                words.append(" (").append(measure).append(" in the file)");
            }
        }
        if (!part.isEmpty()) {
            words.append(words.isEmpty() ? "" : ", ").append("part ").append(part);
        }
        if (line > 0) {
            words.append(words.isEmpty() ? "" : ", ")
                    .append("line ")
                    .append(line)
                    .append(", column ")
                    .append(column);
        }
        return words.toString();
    }
}
