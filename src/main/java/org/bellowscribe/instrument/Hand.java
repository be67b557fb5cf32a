package org.bellowscribe.instrument;

/** A hand of the player. */
public enum Hand {
    /** The left hand. */
    LEFT,
    /** The right hand. */
    RIGHT;

    /** Returns the other hand. */
    public Hand opposite() {
        return this == LEFT ? RIGHT : LEFT;
    }

    /** Returns the name in small letters: {@code left} or {@code right}. */
    public String label() {
        return this == LEFT ? "left" : "right";
    }
}
