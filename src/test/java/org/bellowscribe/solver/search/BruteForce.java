package org.bellowscribe.solver.search;

import java.util.Arrays;

/** Tries every assignment of a tiny problem; openings by trying every integer at the start and every amount. */
public final class BruteForce {

    /** What marks cost beside the problem's own points. */
    @FunctionalInterface
    public interface Extra {
        /** Returns points, 0 or more, for the option and the move of each event. */
        int cost(int[] option, int[] move);
    }

    private static final int UNKNOWN = Integer.MIN_VALUE;

    private final Problem problem;
    private final Extra extra;
    /** The openings before and after each event that was played. */
    private final int[] openings;

    private int best = Integer.MAX_VALUE;

    private BruteForce(Problem problem, Extra extra) {
        this.extra = extra;
        this.problem = problem;
        openings = new int[2 * problem.size()];
        Arrays.fill(openings, UNKNOWN);
    }

    /** Returns the least cost, or {@link Integer#MAX_VALUE} if there is no answer. */
    public static int cost(Problem problem) {
        return cost(problem, (option, move) -> 0);
    }

    /** Returns the least cost with something added, or {@link Integer#MAX_VALUE} if there is no answer. */
    public static int cost(Problem problem, Extra extra) {
        BruteForce force = new BruteForce(problem, extra);
        force.choose(0, new int[problem.size()], new int[problem.size()]);
        return force.best;
    }

    private void choose(int e, int[] option, int[] move) {
        if (e == problem.size()) {
            best = Math.min(
                    best, leastOpeningCost(problem.cost(option, move) + extra.cost(option, move), option, move));
            return;
        }
        for (int c = 0; c < problem.options().get(e).size(); c++) {
            for (int m = 0; m < problem.options().get(e).get(c).moves().size(); m++) {
                option[e] = c;
                move[e] = m;
                choose(e + 1, option, move);
            }
        }
    }

    private int leastOpeningCost(int marks, int[] option, int[] move) {
        int least = Integer.MAX_VALUE;
        if (marks < best) {
            for (int start = problem.startLow(); start <= problem.startHigh(); start++) {
                least = Math.min(least, play(0, start, start, option, move));
            }
        }
        return least == Integer.MAX_VALUE ? least : marks + least;
    }

    // Plays on in the order of play; the amount of an event is the same each time, and so is the opening before it.
    private int play(int i, int start, int opening, int[] option, int[] move) {
        if (i == problem.order().size()) {
            return problem.again() && Math.abs(opening - start) > problem.margin() ? Integer.MAX_VALUE : 0;
        }
        int e = problem.order().get(i);
        if (openings[2 * e] != UNKNOWN) {
            return openings[2 * e] == opening
                    ? play(i + 1, start, openings[2 * e + 1], option, move)
                    : Integer.MAX_VALUE;
        }
        Option chosen = problem.options().get(e).get(option[e]);
        Move spent = chosen.moves().get(move[e]);
        int least = Integer.MAX_VALUE;
        for (int amount = spent.low(); amount <= spent.high(); amount++) {
            int next = opening + chosen.sign() * amount;
            if (next >= problem.lowest() && next <= problem.highest()) {
                openings[2 * e] = opening;
                openings[2 * e + 1] = next;
                int rest = play(i + 1, start, next, option, move);
                if (rest < Integer.MAX_VALUE) {
                    least = Math.min(least, problem.zones().get(e).at(next) + rest);
                }
                openings[2 * e] = UNKNOWN;
            }
        }
        return least;
    }
}
