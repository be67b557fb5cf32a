package org.bellowscribe.solver;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a solution costs.
 *
 * @param total points
 * @param lowerBound no solution costs less than this
 * @param byRule points of each rule that charged any, by rule id; they add up to the total
 */
public record Cost(int total, int lowerBound, SortedMap<String, Integer> byRule) {

    /** Copies the map. */
    public Cost {
        byRule = Collections.unmodifiableSortedMap(new TreeMap<>(byRule));
    }

    /** Returns true if the solution is proved to be the cheapest. */
    public boolean isProved() {
        return total == lowerBound;
    }
}
