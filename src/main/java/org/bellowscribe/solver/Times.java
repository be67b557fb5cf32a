package org.bellowscribe.solver;

/** How often the marks must be good for. */
public enum Times {
    /** Again and again without resetting the bellows. */
    AGAIN,
    /** One time through; the player resets the bellows before the next. */
    ONCE
}
