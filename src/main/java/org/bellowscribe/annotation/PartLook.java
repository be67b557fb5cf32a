package org.bellowscribe.annotation;

/** What a part of ours looks like. */
public enum PartLook {
    /** The left hand in the bass clef. */
    LEFT_HAND("left-hand", "Left hand", "L.H."),
    /** Strokes of the bellows on the middle line, without pitch. */
    BELLOWS("bellows", "Bellows", "Bel."),
    /** A melody in the treble clef. */
    MELODY("melody", "Melody", "Mel.");

    private final String id;
    private final String title;
    private final String abbreviation;

    PartLook(String id, String title, String abbreviation) {
        this.id = id;
        this.title = title;
        this.abbreviation = abbreviation;
    }

    /** Returns the id: kebab-case. */
    public String id() {
        return id;
    }

    /** Returns what stands before its first line. */
    public String title() {
        return title;
    }

    /** Returns what stands before its other lines. */
    public String abbreviation() {
        return abbreviation;
    }
}
