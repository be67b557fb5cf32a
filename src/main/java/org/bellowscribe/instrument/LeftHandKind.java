package org.bellowscribe.instrument;

/** What a left-hand button sounds. */
public enum LeftHandKind {
    /** A single bass note (reeds in octaves). */
    BASS,
    /** A chord. */
    CHORD;

    /** Returns the name in small letters: {@code bass} or {@code chord}. */
    public String label() {
        return this == BASS ? "bass" : "chord";
    }
}
