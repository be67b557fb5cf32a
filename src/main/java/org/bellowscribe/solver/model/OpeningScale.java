package org.bellowscribe.solver.model;

import java.util.Arrays;
import java.util.function.IntUnaryOperator;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.solver.search.Zones;

/** Openings in whole percent of the capacity, as rules see them, and in thousandths of a RU.s, as the search does. */
final class OpeningScale {

    private static final int PERCENT = 100;
    private static final int THOUSANDTHS = 1000;

    private final int capacity;

    OpeningScale(Bellows bellows) {
        capacity = (int) Math.round(bellows.capacity() * THOUSANDTHS);
    }

    /** Returns an opening in percent, rounded to the nearest. */
    int percent(int opening) {
        return (int) ((2L * PERCENT * opening + capacity) / (2L * capacity));
    }

    /** Returns the opening at a percentage, in thousandths of a RU.s. */
    int at(int percent) {
        return (int) ((long) capacity * percent / PERCENT);
    }

    // The smallest opening that is rounded to it.
    private int from(int percent) {
        return (int) -Math.floorDiv(-(long) capacity * (2 * percent - 1), 2L * PERCENT);
    }

    /** Returns the zones of openings that cost the same, from the points at each percentage. */
    Zones zones(IntUnaryOperator points) {
        int[] from = new int[PERCENT + 1];
        int[] cost = new int[PERCENT + 1];
        int zones = 0;
        for (int percent = 0; percent <= PERCENT; percent++) {
            int here = points.applyAsInt(percent);
            if (zones == 0 || cost[zones - 1] != here) {
                from[zones] = percent == 0 ? 0 : from(percent);
                cost[zones++] = here;
            }
        }
        return new Zones(Arrays.copyOf(from, zones), Arrays.copyOf(cost, zones));
    }
}
