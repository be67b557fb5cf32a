package org.bellowscribe.drawing;

import java.util.List;

/**
 * On what the curve is drawn: how wide its rows are and what has room in them.
 *
 * @param width width of a row in units
 * @param left where the curve begins
 * @param right where the longest row ends
 * @param head room over the curve
 * @param plot height of the curve
 * @param foot room under it
 * @param letter width of a letter, on an average
 * @param measures so many measures of usual length have room in a row
 * @param openings what the opening is called at the top, in the middle and at the bottom
 * @param reserve how what is kept in reserve is filled
 */
record CurvePaper(
        double width,
        double left,
        double right,
        double head,
        double plot,
        double foot,
        double letter,
        int measures,
        List<String> openings,
        String reserve) {

    /** A sheet of paper, rows below each other. */
    static final CurvePaper PRINT = new CurvePaper(
            720, 74, 712, 26, 118, 28, 7, 16, List.of("wide open", "half open", "closed"), CurveLegend.HATCHED);

    /** A page of a report, where a row must be read on a telephone. */
    static final CurvePaper PAGE =
            new CurvePaper(330, 40, 326, 18, 88, 16, 5.5, 8, List.of("open", "half", "closed"), "none");

    /** Returns the height of a row. */
    double row() {
        return head + plot + foot;
    }
}
