package org.bellowscribe.drawing;

/**
 * Where times and openings lie in a row of the curve.
 *
 * @param paper on what it is drawn
 * @param top upper edge of the curve: the bellows wide open
 * @param starts when the row begins, in seconds from the start of the tune
 * @param unitsPerSecond how wide a second is
 * @param capacity air from closed to wide open, in RU.s
 */
record CurveScale(CurvePaper paper, double top, double starts, double unitsPerSecond, double capacity) {

    double x(double time) {
        return paper.left() + (time - starts) * unitsPerSecond;
    }

    double y(double opening) {
        return top + paper.plot() * (1 - opening / capacity);
    }

    double bottom() {
        return top + paper.plot();
    }
}
