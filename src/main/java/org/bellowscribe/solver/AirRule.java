package org.bellowscribe.solver;

/** A rule about pressing the air button during an event. */
public non-sealed interface AirRule extends Rule {

    /** Returns the points, 0 or more, the same for a larger use of air or more; 0 for none. */
    int points(Moment moment, AirUse air, Points points);
}
