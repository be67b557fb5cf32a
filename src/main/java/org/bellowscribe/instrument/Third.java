package org.bellowscribe.instrument;

/** The third of a left-hand chord. */
public enum Third {
    /** Major. */
    MAJOR,
    /** Minor. */
    MINOR,
    /** No third sounds: root and fifth only, or a single bass note. */
    NONE
}
