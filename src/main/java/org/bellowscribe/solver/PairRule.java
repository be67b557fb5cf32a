package org.bellowscribe.solver;

/** A rule about how the right hand and the bellows get from one event to the next. */
public non-sealed interface PairRule extends Rule {

    /** Returns the points, 0 or more. */
    int points(Moment before, Choice from, Moment after, Choice to, Points points);
}
