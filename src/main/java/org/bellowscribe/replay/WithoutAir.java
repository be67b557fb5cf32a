package org.bellowscribe.replay;

import java.util.List;

/**
 * How the bellows would go if the air button were left alone at some steps.
 *
 * @param from place in the performance, from 0, where it begins
 * @param openings the opening after each place from there on, in RU.s; they end with the performance, or with the first
 *     that leaves what the bellows may be used for
 * @param end what the bellows come to
 */
public record WithoutAir(int from, List<Double> openings, End end) {

    /** What the bellows come to. */
    public enum End {
        /** The end of the tune. */
        LASTS,
        /** They are too nearly closed to play on. */
        CLOSED,
        /** They are too wide open to play on. */
        WIDE_OPEN
    }

    /** Copies the list. */
    public WithoutAir {
        openings = List.copyOf(openings);
    }

    /** Returns the last place in the performance that it reaches. */
    public int last() {
        return from + openings.size() - 1;
    }

    /** Returns the opening at which it ends. */
    public double lastOpening() {
        return openings.get(openings.size() - 1);
    }
}
