package org.bellowscribe.solver;

import org.bellowscribe.accompaniment.LeftHandFit;

/** A rule about what the left hand does at one moment where a sound is wanted. */
public non-sealed interface LeftHandRule extends Rule {

    /** Returns the points, 0 or more. */
    int points(Moment moment, LeftHandPlay play, LeftHandFit fit, Points points);
}
