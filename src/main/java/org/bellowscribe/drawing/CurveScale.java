package org.bellowscribe.drawing;

/**
 * Where times and openings lie in a row of the curve.
 *
 * @param top upper edge of the curve: the bellows wide open
 * @param starts when the row begins, in seconds from the start of the tune
 * @param unitsPerSecond how wide a second is
 * @param capacity air from closed to wide open, in RU.s
 */
record CurveScale(double top, double starts, double unitsPerSecond, double capacity) {

    /** Width of the picture in units. */
    static final double WIDTH = 720;

    /** Where the curve begins and ends. */
    static final double LEFT = 74;

    static final double RIGHT = 712;

    /** Height of the curve. */
    static final double PLOT = 118;

    /** Room over and under it. */
    static final double HEAD = 26;

    static final double FOOT = 28;

    /** Returns the scale of a row. */
    static CurveScale of(CurveRows.Row row, double y, double longest, double capacity) {
        return new CurveScale(y + HEAD, row.first().starts(), (RIGHT - LEFT) / longest, capacity);
    }

    double x(double time) {
        return LEFT + (time - starts) * unitsPerSecond;
    }

    double y(double opening) {
        return top + PLOT * (1 - opening / capacity);
    }

    double bottom() {
        return top + PLOT;
    }
}
