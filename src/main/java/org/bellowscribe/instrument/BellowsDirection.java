package org.bellowscribe.instrument;

/** The way the bellows go. */
public enum BellowsDirection {
    /** The bellows close. */
    PUSH,
    /** The bellows open. */
    PULL;

    /** Returns the other way. */
    public BellowsDirection opposite() {
        return this == PUSH ? PULL : PUSH;
    }

    /** Returns -1 for push (the opening shrinks), 1 for pull. */
    public int sign() {
        return this == PUSH ? -1 : 1;
    }

    /** Returns the name in small letters: {@code push} or {@code pull}. */
    public String label() {
        return this == PUSH ? "push" : "pull";
    }
}
