package org.bellowscribe.solver.alike;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bellowscribe.solver.search.Answer;
import org.bellowscribe.solver.search.Problem;
import org.bellowscribe.solver.search.Search;

/**
 * Weighs the price of equal measures that differ. From below: {@link Tolls}, raised step by step along the slope of their
 * bound (subgradient, after Held, Wolfe and Crowder 1974; from memory). From above: {@link PatternProblem}, for the marks
 * that most measures of a group have in what is found on the way. Ends when the two are near each other or the work is
 * used up.
 */
public final class AlikeSearch {

    private static final int ROUNDS = 20;
    // Near: one part in fifty. What takes less work than this is searched further all the same.
    private static final int NEAR = 50;
    private static final int CHEAP = 10_000;
    // A round without gain takes smaller steps.
    private static final double SHORTER = 0.85;
    // A bound may take a few times the work of the tune without tolls.
    private static final int TIMES_PLAIN = 2;
    private static final int LEAST_CELLS = 4_000;
    private static final int PARTS = 4;

    private final Problem problem;
    private final Twins twins;
    private final int wantedStart;
    private final Answer plain;
    private final Set<List<Integer>> tried = new HashSet<>();
    private Answer best;
    private final long each;
    private final long until;
    private int lower;
    private long cells;
    private int nodes;

    private AlikeSearch(Problem problem, Twins twins, long cellLimit, int wantedStart, Answer plain) {
        this.problem = problem;
        this.twins = twins;
        this.wantedStart = wantedStart;
        this.plain = plain;
        best = priced(plain, Marks.of(plain));
        lower = plain.lowerBound();
        count(plain);
        each = Math.min(Math.max(TIMES_PLAIN * plain.cells(), LEAST_CELLS), cellLimit / PARTS);
        until = cells + cellLimit / 2;
    }

    // For one solve of many. Never nothing: a small tune takes hardly any.
    private long allowance() {
        return Math.max(LEAST_CELLS, Math.min(each, until - cells));
    }

    /**
     * Returns an answer in which equal measures are played alike where that is worth their price.
     *
     * @param problem the problem
     * @param twins its equal measures
     * @param cellLimit states to expand for the problem without that price; about half as many again are spent on it
     * @param wantedStart opening that the start should have if the cheapest marks leave it free
     * @param plain the answer to the problem without that price
     */
    public static Alike improve(Problem problem, Twins twins, long cellLimit, int wantedStart, Answer plain) {
        return twins.isEmpty() || !plain.isFound()
                ? new Alike(plain, List.of())
                : new AlikeSearch(problem, twins, cellLimit, wantedStart, plain).run();
    }

    private Alike run() {
        tryPatterns(Marks.of(plain));
        approach();
        List<Difference> differences = differences();
        return new Alike(answer(), differences);
    }

    private Answer answer() {
        int bound = Math.min(lower, best.cost());
        return new Answer(best.option(), best.move(), best.openings(), best.cost(), bound, cells, nodes);
    }

    private void approach() {
        Tolls tolls = new Tolls(problem, twins);
        long cheap = cells + CHEAP;
        double share = 1;
        for (int round = 0; round < ROUNDS && lower < best.cost() && cells < (isNear() ? cheap : until); round++) {
            Answer apart = Search.solve(tolls.tune(), allowance(), wantedStart);
            count(apart);
            if (!apart.isFound()) {
                return;
            }
            Marks marks = Marks.of(apart);
            Tolls.Whole whole = tolls.whole(marks);
            long bound = apart.lowerBound() - tolls.shift() + whole.cost();
            int points = (int) -Math.floorDiv(-bound, Tolls.SCALE);
            share *= points > lower ? 1 : SHORTER;
            lower = Math.max(lower, points);
            tryPatterns(marks);
            int slope = tolls.slope(marks, whole);
            if (slope == 0) {
                return;
            }
            tolls.follow(marks, whole, share * (Tolls.SCALE * (best.cost() + 0.5) - bound) / slope);
        }
    }

    private boolean isNear() {
        return (best.cost() - lower) * NEAR <= best.cost();
    }

    private Answer priced(Answer answer, Marks marks) {
        int cost = problem.cost(marks.option(), marks.move()) + twins.cost(marks);
        return new Answer(marks.option(), marks.move(), answer.openings(), cost, 0, 0, 0);
    }

    private void count(Answer answer) {
        cells += answer.cells();
        nodes += answer.nodes();
    }

    private void tryPatterns(Marks marks) {
        int[][] patterns = twins.patterns(marks);
        List<Integer> key =
                Arrays.stream(patterns).flatMapToInt(Arrays::stream).boxed().toList();
        if (tried.add(key)) {
            keep(patterns, new int[0]);
        }
    }

    // Returns the cost of what the patterns lead to; keeps it if it is the best so far.
    private int keep(int[][] patterns, int[] bound) {
        PatternProblem stated = new PatternProblem(problem, twins, patterns, bound);
        Answer answer = Search.solve(stated.stated(), allowance(), wantedStart);
        count(answer);
        if (!answer.isFound() || answer.cost() >= PatternProblem.FORBIDDEN) {
            return Integer.MAX_VALUE;
        }
        Answer found = priced(answer, stated.marks(answer));
        best = isBetter(found) ? found : best;
        return found.cost();
    }

    // Of two as cheap, the one with fewer measures that differ.
    private boolean isBetter(Answer found) {
        return found.cost() < best.cost()
                || (found.cost() == best.cost() && twins.cost(Marks.of(found)) < twins.cost(Marks.of(best)));
    }

    // What it would cost to play each measure that differs as most are played. Where that turns out cheaper after all,
    // it is done, and the rest is asked again.
    private List<Difference> differences() {
        List<Difference> differences = new ArrayList<>();
        Answer before = best;
        Marks marks = Marks.of(best);
        int[][] patterns = twins.patterns(marks);
        for (int g = 0; g < patterns.length; g++) {
            int[] pattern = patterns[g];
            int fellow = twins.groups().get(g).stream()
                    .filter(measure -> Arrays.equals(pattern, twins.signs(measure, marks)))
                    .mapToInt(measure -> measure[0])
                    .findFirst()
                    .orElseThrow();
            for (int[] measure : twins.differing(g, marks)) {
                int cost = keep(patterns, measure);
                if (best != before) {
                    return differences();
                }
                int dearer = cost == Integer.MAX_VALUE ? Difference.IMPOSSIBLE : cost - best.cost();
                differences.add(new Difference(measure[0], fellow, dearer));
            }
        }
        return differences;
    }
}
