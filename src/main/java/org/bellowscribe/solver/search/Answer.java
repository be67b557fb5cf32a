package org.bellowscribe.solver.search;

import org.jspecify.annotations.Nullable;

/**
 * What the search found.
 *
 * @param option chosen option of each event, or null if no answer was found
 * @param move chosen move of each event, or null if no answer was found
 * @param openings opening of each place (two for each event: before, after), or null if no answer was found
 * @param cost its cost; {@link Integer#MAX_VALUE} if no answer was found
 * @param lowerBound no answer costs less; {@link Integer#MAX_VALUE} if it is proved that there is none
 * @param cells states expanded
 * @param nodes nodes of the branching
 */
public record Answer(
        int @Nullable [] option,
        int @Nullable [] move,
        int @Nullable [] openings,
        int cost,
        int lowerBound,
        long cells,
        int nodes) {

    /** It is proved that there is none. */
    public static final Answer NONE = new Answer(null, null, null, Integer.MAX_VALUE, Integer.MAX_VALUE, 0, 0);

    /** Returns true if there is an answer. */
    public boolean isFound() {
        return option != null;
    }

    /** Returns the option of an event in an answer that was found. */
    public int optionAt(int event) {
        return found(option)[event];
    }

    /** Returns the move of an event in an answer that was found. */
    public int moveAt(int event) {
        return found(move)[event];
    }

    /** Returns the openings of an answer that was found. */
    public int[] openingsFound() {
        return found(openings);
    }

    private static int[] found(int @Nullable [] values) {
        if (values == null) {
            throw new IllegalStateException("The search found nothing.");
        }
        return values;
    }

    /** Returns true if nothing more is to be known: the answer is the cheapest, or there is none. */
    public boolean isProved() {
        return cost == lowerBound;
    }
}
