package org.bellowscribe.learning;

import java.util.Comparator;

/**
 * What marks are weighed at: one measure while everything else that was marked stays, or the whole tune at once.
 *
 * @param tune 0-based place of the tune among those marked
 * @param measure 0-based index of the measure; {@link #WHOLE} for the tune as a whole
 */
record Place(int tune, int measure) implements Comparable<Place> {

    private static final Comparator<Place> ORDER =
            Comparator.comparingInt(Place::tune).thenComparingInt(Place::measure);

    static final int WHOLE = -1;

    static Place whole(int tune) {
        return new Place(tune, WHOLE);
    }

    boolean isWhole() {
        return measure == WHOLE;
    }

    @Override
    public int compareTo(Place other) {
        return ORDER.compare(this, other);
    }
}
