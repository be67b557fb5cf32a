package org.bellowscribe.solver;

/** A rule about a measure that is played otherwise than most of the measures that are written the same. */
public non-sealed interface MeasureRule extends Rule {

    /** Returns the points of one such measure, 0 or more. */
    int points(Points points);
}
