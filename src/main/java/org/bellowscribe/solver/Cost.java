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
 * @param timesByRule how often each of these rules charged, by rule id; empty if nobody counted
 * @param apart the least cost when equal measures may differ for nothing
 */
public record Cost(
        int total,
        int lowerBound,
        SortedMap<String, Integer> byRule,
        SortedMap<String, Integer> timesByRule,
        LeastPoints apart) {

    private static final int NEAR = 50;
    private static final int FEW = 3;

    /** Copies the maps. */
    public Cost {
        byRule = Collections.unmodifiableSortedMap(new TreeMap<>(byRule));
        timesByRule = Collections.unmodifiableSortedMap(new TreeMap<>(timesByRule));
    }

    /** Returns true if it is proved that no solution is cheaper by more than one part in fifty, or by a few points. */
    public boolean isNearlyProved() {
        return total - lowerBound <= Math.max(FEW, total / NEAR);
    }

    /** Returns true if the solution is proved to be the cheapest. */
    public boolean isProved() {
        return total == lowerBound;
    }
}
