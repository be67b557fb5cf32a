package org.bellowscribe.stage;

import org.jspecify.annotations.Nullable;

/**
 * A stage of learning a tune: what sounds in it and what its sheet prints. The order is that in which a tune is learned;
 * parts before the whole and cues that fade are practice rules of the literature on motor learning (Fontana 2009; Winstein
 * 1994), and promise nothing.
 */
public enum Stage {
    /** The right hand alone: buttons, direction, fingers, and the air that it needs without the left hand. */
    RIGHT_HAND("right-hand", "Right hand", true, false),
    /** The bellows alone: no note sounds, the bellows go as in the whole tune, through the air button. */
    BELLOWS("bellows", "Bellows", true, true),
    /** The left hand alone, the melody in small notes above it. */
    LEFT_HAND("left-hand", "Left hand", false, true),
    /** Both hands with all marks. */
    BOTH("both", "Both", true, true),
    /** Both hands; a mark that repeats what was marked before is left out. */
    FADING("fading", "Fading", true, true),
    /** Both hands; only what no rule of thumb guesses, and the air. */
    AS_PLAYED("as-played", "As played", true, true);

    private final String id;
    private final String title;
    private final boolean melody;
    private final boolean leftHand;

    Stage(String id, String title, boolean melody, boolean leftHand) {
        this.id = id;
        this.title = title;
        this.melody = melody;
        this.leftHand = leftHand;
    }

    /** Returns the stage of an id, or null if there is none. */
    public static @Nullable Stage of(String id) {
        for (Stage stage : values()) {
            if (stage.id.equals(id)) {
                return stage;
            }
        }
        return null;
    }

    /** Returns the id by which a user asks for it, which its file is called by too: kebab-case. */
    public String id() {
        return id;
    }

    /** Returns what its part is called in a score with several. */
    public String title() {
        return title;
    }

    /** Returns true if the bellows go as the melody takes air. */
    public boolean melody() {
        return melody;
    }

    /** Returns true if the bellows go as the left hand takes air. */
    public boolean leftHand() {
        return leftHand;
    }

    /** Returns true if its sheet is the score with marks and nothing else, so that taking them out gives the score back. */
    public boolean isScoreWithMarks() {
        return this != BELLOWS && this != LEFT_HAND;
    }
}
