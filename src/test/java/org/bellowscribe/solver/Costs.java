package org.bellowscribe.solver;

import java.util.SortedMap;
import java.util.TreeMap;

/** Costs of marks whose equal measures were not compared. */
public final class Costs {

    private Costs() {}

    /** Returns a cost of which nobody counted how often each rule charged. */
    public static Cost of(int total, int lowerBound, SortedMap<String, Integer> byRule) {
        return of(total, lowerBound, byRule, new TreeMap<>());
    }

    /** Returns a cost with points and times by rule id. */
    public static Cost of(
            int total, int lowerBound, SortedMap<String, Integer> byRule, SortedMap<String, Integer> timesByRule) {
        return new Cost(total, lowerBound, byRule, timesByRule, new LeastPoints(total, lowerBound));
    }
}
