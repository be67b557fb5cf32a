package org.bellowscribe.solver.search;

import java.util.Arrays;

/**
 * The calmest openings that an answer's marks may have at the same cost: the least time-weighted distance outside a
 * comfortable band, and then from its middle. The distances are convex and the marks leave difference constraints between
 * places, so the cost is L-natural-convex (Murota 2003, from memory): where no set of places gets cheaper by moving one
 * unit together, nothing is cheaper. Such sets are found exactly as closures, first with large steps, then with shorter ones.
 */
public final class CalmOpenings {

    // A unit outside the band counts as many inside.
    private static final int OUTSIDE = 1000;
    private static final int FIRST_STEP = 1 << 12;
    private static final int SHORTER = 4;

    private final Problem problem;
    private final Graph graph;
    private final Comfort comfort;
    private final int[] riseLow;
    private final int[] riseHigh;
    /** By class of places. */
    private final int[] low;

    private final int[] high;
    private final long[] weight;
    private final int[] opening;

    /**
     * What is comfortable.
     *
     * @param low smallest comfortable opening
     * @param high largest comfortable opening
     * @param time how long each event lasts, in any unit
     */
    public record Comfort(int low, int high, int[] time) {}

    private CalmOpenings(Problem problem, Answer answer, int[] given, Comfort comfort) {
        this.problem = problem;
        this.comfort = comfort;
        graph = new Graph(problem);
        int places = 2 * problem.size();
        riseLow = new int[problem.size()];
        riseHigh = new int[problem.size()];
        low = new int[places];
        high = new int[places];
        weight = new long[places];
        opening = new int[places];
        Arrays.fill(low, problem.lowest());
        Arrays.fill(high, problem.highest());
        narrow(graph.start, problem.startLow(), problem.startHigh());
        for (int e = 0; e < problem.size(); e++) {
            Option option = problem.options().get(e).get(answer.optionAt(e));
            Move move = option.moves().get(answer.moveAt(e));
            riseLow[e] = option.sign() > 0 ? move.low() : -move.high();
            riseHigh[e] = option.sign() > 0 ? move.high() : -move.low();
            opening[graph.before(e)] = given[2 * e];
            opening[graph.after(e)] = given[2 * e + 1];
            weight[graph.before(e)] += comfort.time()[e];
            weight[graph.after(e)] += comfort.time()[e];
            Zones zones = problem.zones().get(e);
            int[] same = zones.around(given[2 * e + 1], zones.at(given[2 * e + 1]));
            narrow(graph.after(e), same[0], same[1]);
        }
    }

    private void narrow(int place, int least, int most) {
        low[place] = Math.max(low[place], least);
        high[place] = Math.min(high[place], most);
    }

    /**
     * Returns an opening for each place (two for each event: before, after).
     *
     * @param problem the problem
     * @param answer an answer that was found
     * @param comfort what is comfortable
     */
    public static int[] of(Problem problem, Answer answer, Comfort comfort) {
        CalmOpenings calm = new CalmOpenings(problem, answer, answer.openingsFound(), comfort);
        for (int step = FIRST_STEP; step > 0; step /= SHORTER) {
            boolean moved = true;
            while (moved) {
                boolean up = calm.move(step);
                moved = calm.move(-step) || up;
            }
        }
        int[] openings = new int[2 * problem.size()];
        Arrays.setAll(openings, place -> calm.opening[calm.graph.place[place]]);
        return openings;
    }

    // Moves the places together that gain most by it; returns false if none do.
    private boolean move(int step) {
        long[] gain = new long[opening.length];
        boolean any = false;
        for (int p = 0; p < gain.length; p++) {
            int moved = opening[p] + step;
            boolean possible = moved >= low[p] && moved <= high[p];
            gain[p] = possible ? weight[p] * (distance(opening[p]) - distance(moved)) : -Integer.MAX_VALUE * 1_000_000L;
            any |= graph.place[p] == p && gain[p] > 0;
        }
        if (!any) {
            return false;
        }
        boolean[] together = together(gain, step);
        boolean moved = false;
        for (int p = 0; p < gain.length; p++) {
            opening[p] += together[p] ? step : 0;
            moved |= together[p];
        }
        return moved;
    }

    private boolean[] together(long[] gain, int step) {
        Closure closure = new Closure(gain);
        for (int e = 0; e < problem.size(); e++) {
            tie(closure, graph.before(e), graph.after(e), riseLow[e], riseHigh[e], step);
        }
        if (problem.again()) {
            tie(closure, graph.start, graph.after(graph.last), -problem.margin(), problem.margin(), step);
        }
        return closure.heaviest();
    }

    // One of two places takes the other along where it would come too far from it.
    private void tie(Closure closure, int a, int b, int least, int most, int step) {
        int rise = opening[b] - opening[a];
        boolean lags = rise - step < least || rise - step > most;
        boolean leads = rise + step < least || rise + step > most;
        if (lags && leads) {
            closure.join(a, b);
        } else if (lags) {
            closure.ask(a, b);
        } else if (leads) {
            closure.ask(b, a);
        }
    }

    private long distance(int at) {
        int outside = Math.max(0, Math.max(comfort.low() - at, at - comfort.high()));
        int fromMiddle = Math.abs(2 * at - comfort.low() - comfort.high()) / 2;
        return (long) OUTSIDE * outside + fromMiddle;
    }
}
