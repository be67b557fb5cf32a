package org.bellowscribe.solver.search;

import org.jspecify.annotations.Nullable;

/** The work of one search: runs passes, counts the states they expand, and keeps the cheapest answer that is found. */
final class Work {

    private final Setting setting;
    private final long cellLimit;

    private int nodes;
    private long cells;
    private int best;
    private @Nullable Trace found;
    private int @Nullable [] foundOpenings;

    /**
     * Begins with nothing found.
     *
     * @param cellLimit states to expand at most
     * @param below answers that cost as much or more are of no use
     */
    Work(Setting setting, long cellLimit, int below) {
        this.setting = setting;
        best = below;
        this.cellLimit = cellLimit;
    }

    /** Runs a pass over the whole tune; null if it finds nothing within the limit. */
    @Nullable
    AirPass pass(Node node, Ceiling ceiling, int limit) {
        return pass(Frame.fromAnchors(setting, node), ceiling, limit);
    }

    /** Runs a pass over the whole tune that counts openings in its own way; null if it finds nothing within the limit. */
    @Nullable
    AirPass pass(Frame frame, Ceiling ceiling, int limit) {
        nodes++;
        return ran(AirPass.whole(setting, frame, ceiling, limit));
    }

    /** Runs a pass; null if it finds nothing within its limit. */
    @Nullable
    AirPass ran(AirPass pass) {
        int cost = pass.run();
        cells += pass.cells();
        return cost < Problem.NEVER ? pass : null;
    }

    /** Returns the cheapest marks that a pass leaves, as if what is still relaxed held. */
    Trace trace(AirPass pass) {
        return new Trace(setting, pass);
    }

    /** Keeps traced marks if they are the best so far; returns true if nothing in the pass's node can be cheaper. */
    boolean isExact(AirPass pass, Trace trace) {
        Placement placement = new Placement(setting, pass, trace);
        int[] exact = placement.exact();
        int[] openings = exact == null ? placement.any() : exact;
        int cost = openings == null
                ? Problem.NEVER
                : setting.problem().cost(trace.option, trace.move)
                        + setting.problem().openingCost(openings);
        if (cost < best) {
            best = cost;
            found = trace;
            foundOpenings = openings;
        }
        return cost <= pass.cost();
    }

    /** Returns what an answer must cost less than: as much as the cheapest so far, or as was asked for. */
    int best() {
        return best;
    }

    /** Returns the cheapest marks so far, or null if none were found. */
    @Nullable
    Trace found() {
        return found;
    }

    /** Returns the opening of each place at which the cheapest marks have their cost, or null if none were found. */
    int @Nullable [] openings() {
        return foundOpenings;
    }

    boolean isFound() {
        return found != null;
    }

    /** Returns true if the work limit has struck. */
    boolean isSpent() {
        return cells >= cellLimit;
    }

    /** Returns true if more than twice the work limit was done: then even a first answer is not looked for. */
    boolean isSpentTwice() {
        return cells / 2 >= cellLimit;
    }

    /** Returns true if so many states are a large part of the work limit. */
    boolean isLargePart(long some, int parts) {
        return some > cellLimit / parts;
    }

    long cells() {
        return cells;
    }

    int nodes() {
        return nodes;
    }
}
