package org.bellowscribe.solver;

/** A rule about what the right hand does at one event. */
public non-sealed interface StepRule extends Rule {

    /** Returns the points, 0 or more. */
    int points(Moment moment, Choice choice, Points points);
}
