package org.bellowscribe.solver.search;

import java.util.Arrays;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The openings of a fixed assignment: a system of difference constraints between places. All bounds are integers, so the
 * shortest paths (Bellman-Ford) are exact and decide whether any openings exist.
 */
final class Openings {

    // Beyond every bellows, and small enough to be added to.
    private static final int FAR = 250_000_000;

    private final Problem problem;
    private final Graph graph;
    /** For each event the least and the most by which its place after lies above its place before. */
    private final int[] riseLow;

    private final int[] riseHigh;

    Openings(Problem problem, Graph graph, int[] option, int[] move) {
        this.problem = problem;
        this.graph = graph;
        riseLow = new int[graph.size];
        riseHigh = new int[graph.size];
        for (int e = 0; e < graph.size; e++) {
            Option chosen = problem.options().get(e).get(option[e]);
            Move spent = chosen.moves().get(move[e]);
            riseLow[e] = chosen.sign() > 0 ? spent.low() : -spent.high();
            riseHigh[e] = chosen.sign() > 0 ? spent.high() : -spent.low();
        }
    }

    private Openings(Problem problem, Graph graph) {
        this.problem = problem;
        this.graph = graph;
        riseLow = new int[graph.size];
        riseHigh = new int[graph.size];
        for (int e = 0; e < graph.size; e++) {
            riseLow[e] = FAR;
            riseHigh[e] = -FAR;
            for (Option option : problem.options().get(e)) {
                for (Move move : option.moves()) {
                    riseLow[e] = Math.min(riseLow[e], option.sign() > 0 ? move.low() : -move.high());
                    riseHigh[e] = Math.max(riseHigh[e], option.sign() > 0 ? move.high() : -move.low());
                }
            }
        }
    }

    /** Returns the openings that all assignments together may have. */
    static Openings ofAll(Problem problem, Graph graph) {
        return new Openings(problem, graph);
    }

    /** Returns the least and the most by which an anchor may lie above the one before it in bellows without end. */
    int[] crossing(int anchor) {
        int before = graph.anchors.get(graph.anchorParent.get(anchor));
        Range range = new Range();
        Arrays.fill(range.low, -FAR);
        Arrays.fill(range.high, FAR);
        range.low[before] = 0;
        range.high[before] = 0;
        range.tighten();
        int place = graph.anchors.get(anchor);
        return new int[] {range.low[place], range.high[place]};
    }

    /** Returns true if there are openings within the bellows. */
    boolean exist() {
        Range range = new Range();
        return range.tighten();
    }

    /** Returns true if there would be openings in bellows without end, so that only their size is in the way. */
    boolean existInEndlessBellows() {
        Range range = new Range();
        Arrays.fill(range.low, -FAR);
        Arrays.fill(range.high, FAR);
        range.low[graph.start] = 0;
        range.high[graph.start] = 0;
        return range.tighten();
    }

    /** Returns the least rise from the last anchor before an event to the event's end. */
    long pathLow(int event) {
        return path(event, riseLow);
    }

    /** Returns the largest rise from the last anchor before an event to the event's end. */
    long pathHigh(int event) {
        return path(event, riseHigh);
    }

    private long path(int event, int[] rise) {
        long sum = 0;
        int e = event;
        while (e >= 0 && graph.stretch[e] == graph.stretch[event]) {
            sum += rise[e];
            e = graph.parent[e];
        }
        return sum;
    }

    /** Returns the least rise to an anchor from the one before it, on the first way there. */
    long crossingLow(int anchor) {
        return pathLow(graph.entry(anchor));
    }

    /** Returns the largest rise to an anchor from the one before it, on the first way there. */
    long crossingHigh(int anchor) {
        return pathHigh(graph.entry(anchor));
    }

    /** Returns the smallest opening at the start from which the bellows never close too far. */
    int leastStart() {
        Range range = new Range();
        Arrays.fill(range.high, FAR);
        range.tighten();
        return range.low[graph.start];
    }

    /** Returns the largest opening at the start from which the bellows never open too far. */
    int mostStart() {
        Range range = new Range();
        Arrays.fill(range.low, -FAR);
        range.tighten();
        return range.high[graph.start];
    }

    /**
     * Returns an opening for each place (two for each event: before, after), or null if there are none.
     *
     * @param at for some classes of places the first and the last opening that they may have
     */
    int @Nullable [] placed(Map<Integer, int[]> at) {
        Range range = new Range();
        at.forEach(range::narrow);
        if (!range.tighten()) {
            return null;
        }
        // Of tight difference constraints the means of both ends keep all, rounded down too.
        int[] openings = new int[2 * graph.size];
        Arrays.setAll(openings, place -> {
            int low = range.low[graph.place[place]];
            return low + (range.high[graph.place[place]] - low) / 2;
        });
        return openings;
    }

    /** The openings that each class of places can still have. */
    private final class Range {
        final int[] low = new int[2 * graph.size];
        final int[] high = new int[2 * graph.size];

        Range() {
            Arrays.fill(low, problem.lowest());
            Arrays.fill(high, problem.highest());
            low[graph.start] = problem.startLow();
            high[graph.start] = problem.startHigh();
        }

        // Each round carries a bound one event further; without a contradiction nothing changes after as many rounds as
        // there are places.
        boolean tighten() {
            for (int round = 0; round <= 2 * graph.size + 1; round++) {
                boolean changed = false;
                for (int e : graph.visit) {
                    changed |= link(graph.before(e), graph.after(e), riseLow[e], riseHigh[e]);
                }
                for (int i = graph.size - 1; i >= 0; i--) {
                    int e = graph.visit[i];
                    changed |= link(graph.before(e), graph.after(e), riseLow[e], riseHigh[e]);
                }
                if (problem.again()) {
                    changed |= link(graph.start, graph.after(graph.last), -problem.margin(), problem.margin());
                }
                for (int e : graph.visit) {
                    if (low[graph.after(e)] > high[graph.after(e)] || low[graph.before(e)] > high[graph.before(e)]) {
                        return false;
                    }
                }
                if (!changed) {
                    return true;
                }
            }
            return false;
        }

        private boolean link(int a, int b, int least, int most) {
            boolean changed = false;
            if (low[b] < low[a] + least) {
                low[b] = low[a] + least;
                changed = true;
            }
            if (high[b] > high[a] + most) {
                high[b] = high[a] + most;
                changed = true;
            }
            if (low[a] < low[b] - most) {
                low[a] = low[b] - most;
                changed = true;
            }
            if (high[a] > high[b] - least) {
                high[a] = high[b] - least;
                changed = true;
            }
            return changed;
        }

        void narrow(int placeClass, int[] within) {
            low[placeClass] = Math.max(low[placeClass], within[0]);
            high[placeClass] = Math.min(high[placeClass], within[1]);
        }
    }
}
