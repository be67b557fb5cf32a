package org.bellowscribe.solver;

import java.util.Locale;

/** How far the air button is pressed during an event. */
public enum AirUse {
    /** Not at all. */
    NONE,
    /** Lightly: at most the light flow is needed. */
    LIGHT,
    /** Up to fully. */
    FULL;

    /** Returns the name in small letters. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
