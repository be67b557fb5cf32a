package org.bellowscribe.solver.equal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import org.bellowscribe.solver.search.Answer;
import org.bellowscribe.solver.search.Problem;
import org.bellowscribe.solver.search.Search;

/**
 * Weighs the price of equal measures that differ. From below: {@link Tolls}, raised step by step along the slope of their
 * bound (subgradient, after Held, Wolfe and Crowder 1974; from memory), and where that comes to a halt, branch and bound
 * over the common marks that are {@link Allowed}. From above: {@link PatternProblem}, for the marks that most measures of a
 * group have in what is found on the way. Ends when the two are near each other or the work is used up.
 */
public final class AlikeSearch {

    private static final int ROUNDS = 6;
    private static final int ROUNDS_OF_A_PART = 2;
    // Near: one part in fifty. What takes less work than this is searched further all the same.
    private static final int NEAR = 50;
    private static final int CHEAP = 10_000;
    // A round without gain takes smaller steps.
    private static final double SHORTER = 0.85;
    // A bound may take some times the work of the tune without tolls, or what is little all the same.
    private static final int TIMES_PLAIN = 8;
    private static final int LITTLE = 30_000;
    // Never nothing: a small tune takes hardly any.
    private static final int LEAST = 4_000;
    private static final int PARTS = 4;

    private final Problem problem;
    private final Twins twins;
    private final Kinds kinds;
    private final int wantedStart;
    private final Answer plain;
    private final Set<List<Integer>> tried = new HashSet<>();
    private Answer best;
    private final long each;
    private final long until;
    private final long cheap;
    private int lower;
    private long cells;
    private int nodes;

    private AlikeSearch(Problem problem, Twins twins, long cellLimit, int wantedStart, Answer plain) {
        this.problem = problem;
        this.twins = twins;
        this.wantedStart = wantedStart;
        this.plain = plain;
        kinds = new Kinds(twins);
        best = priced(plain, Marks.of(plain));
        lower = plain.lowerBound();
        count(plain);
        each = Math.min(Math.max(TIMES_PLAIN * plain.cells(), LITTLE), cellLimit / PARTS);
        cheap = cells + CHEAP;
        until = cells + Math.max(cellLimit / (2 * PARTS), cellLimit - 2 * plain.cells());
    }

    // For one solve of many.
    private long allowance() {
        return Math.max(LEAST, Math.min(each, until - cells));
    }

    /**
     * Returns an answer in which equal measures are played alike where that is worth their price.
     *
     * @param problem the problem
     * @param twins its equal measures
     * @param cellLimit states to expand for the problem without that price; as many are spent on it if that problem is easy,
     *     and few if it is hard
     * @param wantedStart opening that the start should have if the cheapest marks leave it free
     * @param plain the answer to the problem without that price
     */
    public static Alike improve(Problem problem, Twins twins, long cellLimit, int wantedStart, Answer plain) {
        return twins.isEmpty() || !plain.isFound()
                ? new Alike(plain, List.of(), plain)
                : new AlikeSearch(problem, twins, cellLimit, wantedStart, plain).run();
    }

    private Alike run() {
        tryPatterns(Marks.of(plain));
        approach();
        List<Difference> differences = differences();
        return new Alike(answer(), differences, plain);
    }

    private Answer answer() {
        int bound = Math.min(lower, best.cost());
        return new Answer(best.option(), best.move(), best.openings(), best.cost(), bound, cells, nodes);
    }

    /** A heap of answers: its tolls, and the bound and the marks that the tune by itself has at them. */
    private record Heap(Tolls tolls, int bound, Marks marks) {}

    private void approach() {
        PriorityQueue<Heap> open = new PriorityQueue<>(Comparator.comparingInt(Heap::bound));
        int settled = Integer.MAX_VALUE;
        open.add(climb(new Tolls(problem, twins, kinds), lower, ROUNDS));
        while (!open.isEmpty()) {
            lower = Math.max(lower, Math.min(settled, open.element().bound()));
            if (isEnough(lower)) {
                return;
            }
            Heap heap = open.remove();
            List<Allowed> parts = heap.tolls().allowed().parts(heap.marks());
            settled = parts.isEmpty() ? Math.min(settled, heap.bound()) : settled;
            for (Allowed part : parts) {
                open.add(climb(heap.tolls().narrowed(part), heap.bound(), ROUNDS_OF_A_PART));
            }
        }
        lower = Math.max(lower, Math.min(settled, best.cost()));
    }

    // Raises the tolls of a heap until its bound is near the best answer, or for some rounds.
    private Heap climb(Tolls tolls, int from, int rounds) {
        int bound = from;
        double share = 1;
        Marks marks = Marks.of(best);
        for (int round = 0; round < rounds && !isEnough(bound); round++) {
            PatternProblem tune = tolls.tune();
            Answer apart = Search.solve(tune.stated(), allowance(), wantedStart);
            count(apart);
            if (!apart.isFound()) {
                return new Heap(tolls, apart.isProved() ? best.cost() : bound, marks);
            }
            marks = tune.marks(apart);
            Tolls.Whole whole = tolls.whole(marks);
            long exact = apart.lowerBound() - tolls.shift() + whole.cost();
            int points = (int) -Math.floorDiv(-exact, Tolls.SCALE);
            share *= points > bound ? 1 : SHORTER;
            bound = Math.max(bound, points);
            tryPatterns(marks);
            int slope = tolls.slope(marks, whole);
            if (slope == 0) {
                break;
            }
            tolls.follow(marks, whole, share * (Tolls.SCALE * (best.cost() + 0.5) - exact) / slope);
        }
        return new Heap(tolls, bound, marks);
    }

    // A bound is enough if it is the best answer, if it is near and more would not be cheap, or if the work is used up.
    private boolean isEnough(int bound) {
        boolean near = (best.cost() - bound) * NEAR <= best.cost();
        return bound >= best.cost() || cells >= (near ? cheap : until);
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
        PatternProblem stated = new PatternProblem(problem, wanted(patterns, bound));
        Answer answer = Search.solve(stated.stated(), allowance(), wantedStart);
        count(answer);
        if (!answer.isFound() || answer.cost() >= PatternProblem.FORBIDDEN) {
            return Integer.MAX_VALUE;
        }
        Answer found = priced(answer, stated.marks(answer));
        best = isBetter(found) ? found : best;
        return found.cost();
    }

    private List<PatternProblem.Wanted> wanted(int[][] patterns, int[] bound) {
        List<PatternProblem.Wanted> wanted = new ArrayList<>();
        for (int g = 0; g < patterns.length; g++) {
            for (int[] measure : twins.groups().get(g)) {
                int price = measure == bound ? PatternProblem.FORBIDDEN : twins.price();
                wanted.add(new PatternProblem.Wanted(measure, price, twins.keeps(measure, patterns[g])));
            }
        }
        return wanted;
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
                if (!best.equals(before)) {
                    return differences();
                }
                int dearer = cost == Integer.MAX_VALUE ? Difference.IMPOSSIBLE : cost - best.cost();
                differences.add(new Difference(measure[0], fellow, dearer));
            }
        }
        return differences;
    }
}
