package org.bellowscribe.solver;

/**
 * What is known of the least cost of some marks.
 *
 * @param total points of the cheapest marks that were found
 * @param lowerBound no marks cost less
 */
public record LeastPoints(int total, int lowerBound) {

    /** Returns true if it is proved that no marks cost less. */
    public boolean isProved() {
        return total == lowerBound;
    }
}
