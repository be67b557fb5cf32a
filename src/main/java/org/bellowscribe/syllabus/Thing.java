package org.bellowscribe.syllabus;

/**
 * Something that a pupil has to learn once.
 *
 * @param kind what it is
 * @param place where among its kind it stands, for things that have places: the row, column or beat; the fifths of a
 *     key; 0 for others
 * @param number number in that place, for things that have one; 0 for others
 * @param name words for it, such as {@code push}, {@code 6/8} or {@code G}
 */
public record Thing(Kind kind, int place, int number, String name) implements Comparable<Thing> {

    /** Kinds of things, in the order in which they are told. */
    public enum Kind {
        /** A button of the melody in one direction: one note of the box. The place is its row. */
        BUTTON,
        /** A bass in one direction. The place is its column. */
        BASS,
        /** A chord in one direction. The place is its column. */
        CHORD,
        /** A way in which the bellows turn between two notes. */
        REVERSAL,
        /** A change from one row to another while the bellows go on. */
        ROW_CHANGE,
        /** A place of the hand: the number of the button under the index finger. */
        HAND_PLACE,
        /** A way to press the air button. */
        AIR,
        /** A time signature. */
        TIME,
        /** A key. */
        KEY,
        /** A rhythm within a measure, from a beat at which a note begins to the next. */
        RHYTHM
    }

    @Override
    public int compareTo(Thing other) {
        int byKind = kind.compareTo(other.kind);
        int byPlace = byKind != 0 ? byKind : Integer.compare(place, other.place);
        int byNumber = byPlace != 0 ? byPlace : Integer.compare(number, other.number);
        return byNumber != 0 ? byNumber : name.compareTo(other.name);
    }
}
