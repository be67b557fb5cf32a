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
 * Weighs the price of equal measures that differ. From below: {@link Relaxation}, raised step by step along the slope of their
 * bound (subgradient, after Held, Wolfe and Crowder 1974; from memory), and where that comes to a halt, branch and bound
 * over the common marks that are {@link Block}. From above: {@link PatternProblem}, for the marks that most measures of a
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
    // A bound may take some times the work of the tune without multipliers, or what is little all the same.
    private static final int TIMES_PLAIN = 8;
    private static final int LITTLE = 30_000;
    // Never nothing: a small tune takes hardly any.
    private static final int LEAST = 4_000;
    private static final int PARTS = 4;
    // What it would cost to play one measure more like its equals is only told: it is worth no long search.
    private static final int TOLD = 20_000;

    private final Problem problem;
    private final EqualGroups groups;
    private final Kinds kinds;
    private final Answer plain;
    private final Set<List<Integer>> tried = new HashSet<>();
    private final Known known = new Known();
    private Answer best;
    private final long each;
    private final long until;
    private final long cheap;
    private int lower;
    private long cells;
    private int nodes;

    private AlikeSearch(Problem problem, EqualGroups groups, long cellLimit, Answer plain) {
        this.problem = problem;
        this.groups = groups;
        this.plain = plain;
        kinds = new Kinds(groups);
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
     * @param groups its equal measures
     * @param cellLimit states to expand for the problem without that price; as many are spent on it if that problem is easy,
     *     and few if it is hard
     * @param plain the answer to the problem without that price
     */
    public static Alike improve(Problem problem, EqualGroups groups, long cellLimit, Answer plain) {
        return groups.isEmpty() || !plain.isFound()
                ? new Alike(plain, List.of(), plain)
                : new AlikeSearch(problem, groups, cellLimit, plain).run();
    }

    private Alike run() {
        tryPatterns(Marks.of(plain));
        approach();
        List<Outlier> differences = differences();
        return new Alike(answer(), differences, plain);
    }

    private Answer answer() {
        int bound = Math.min(lower, best.cost());
        return new Answer(best.option(), best.move(), best.openings(), best.cost(), bound, cells, nodes);
    }

    /** A block that is still open: its relaxation, and the bound and the tune's marks there. */
    private record Open(Relaxation relaxation, int bound, Marks marks) {}

    private void approach() {
        PriorityQueue<Open> open = new PriorityQueue<>(Comparator.comparingInt(Open::bound));
        int settled = Integer.MAX_VALUE;
        open.add(climb(new Relaxation(problem, groups, kinds), lower, ROUNDS));
        while (!open.isEmpty()) {
            lower = Math.max(lower, Math.min(settled, open.element().bound()));
            if (isEnough(lower)) {
                return;
            }
            Open block = open.remove();
            List<Block> parts = block.relaxation().block().parts(block.marks());
            settled = parts.isEmpty() ? Math.min(settled, block.bound()) : settled;
            for (Block part : parts) {
                open.add(climb(block.relaxation().narrowed(part), block.bound(), ROUNDS_OF_A_PART));
            }
        }
        lower = Math.max(lower, Math.min(settled, best.cost()));
    }

    // Raises the bound of a block until its bound is near the best answer, or for some rounds.
    private Open climb(Relaxation relaxation, int from, int rounds) {
        int bound = from;
        double share = 1;
        Marks marks = Marks.of(best);
        for (int round = 0; round < rounds && !isEnough(bound); round++) {
            PatternProblem tune = relaxation.tune();
            Answer apart = known.solve(tune, best, allowance());
            count(apart);
            marks = tune.marks(apart);
            GroupMarks chosen = GroupMarks.none(problem.size());
            long exact = apart.lowerBound() - relaxation.shift() + relaxation.solveGroups(marks, chosen);
            int here = roundedUp(exact, relaxation.scale());
            share *= here > bound ? 1 : SHORTER;
            bound = Math.max(bound, here);
            tryPatterns(marks);
            int slope = relaxation.slope(marks, chosen);
            if (slope == 0) {
                break;
            }
            relaxation.follow(
                    marks, chosen, share * (relaxation.scale() * (best.cost() + problem.unit() / 2.0) - exact) / slope);
        }
        return new Open(relaxation, bound, marks);
    }

    private static int roundedUp(long exact, int scale) {
        return (int) Math.min(Integer.MAX_VALUE, -Math.floorDiv(-exact, scale));
    }

    // A bound is enough if it is the best answer, if it is near and more would not be cheap, or if the work is used up.
    private boolean isEnough(int bound) {
        boolean near = ((long) best.cost() - bound) * NEAR <= best.cost();
        return bound >= best.cost() || cells >= (near ? cheap : until);
    }

    private Answer priced(Answer answer, Marks marks) {
        int cost = problem.cost(marks.option(), marks.move())
                + problem.openingCost(answer.openingsFound())
                + groups.cost(marks);
        return new Answer(marks.option(), marks.move(), answer.openings(), cost, 0, 0, 0);
    }

    private void count(Answer answer) {
        cells += answer.cells();
        nodes += answer.nodes();
    }

    private void tryPatterns(Marks marks) {
        int[][] patterns = groups.patterns(marks);
        List<Integer> key =
                Arrays.stream(patterns).flatMapToInt(Arrays::stream).boxed().toList();
        if (tried.add(key)) {
            keep(patterns, List.of(), best.cost() + 1);
        }
    }

    // Returns the cost of what the patterns lead to if some measures must have them and if it is less than another one;
    // keeps it if it is the best so far.
    private int keep(int[][] patterns, List<int[]> bound, int below) {
        PatternProblem stated = new PatternProblem(problem, wanted(patterns, bound));
        long cellLimit = bound.isEmpty() ? allowance() : Math.min(TOLD, allowance());
        Answer answer = Search.solve(stated.stated(), cellLimit, below);
        count(answer);
        if (!answer.isFound()) {
            return Integer.MAX_VALUE;
        }
        Answer found = priced(answer, stated.marks(answer));
        best = isBetter(found) ? found : best;
        return found.cost();
    }

    private List<PatternProblem.Wanted> wanted(int[][] patterns, List<int[]> bound) {
        List<PatternProblem.Wanted> wanted = new ArrayList<>();
        for (int g = 0; g < patterns.length; g++) {
            for (int[] measure : groups.list().get(g)) {
                int price = bound.contains(measure) ? PatternProblem.FORBIDDEN : groups.price();
                wanted.add(new PatternProblem.Wanted(measure, price, groups.keeps(measure, patterns[g])));
            }
        }
        return wanted;
    }

    // Of two of as many points, the one with fewer measures that differ.
    private boolean isBetter(Answer found) {
        int points = problem.points(found.cost()) - problem.points(best.cost());
        int unlike = groups.cost(Marks.of(found)) - groups.cost(Marks.of(best));
        return points < 0 || (points == 0 && (unlike < 0 || (unlike == 0 && found.cost() < best.cost())));
    }

    // What it would cost to play each measure that differs as most are played, while all that are played so stay: else
    // another would only differ in its place. Where that turns out to cost nothing, it is done, and the rest is asked
    // again.
    private List<Outlier> differences() {
        List<Outlier> differences = new ArrayList<>();
        Answer before = best;
        Marks marks = Marks.of(best);
        int[][] patterns = groups.patterns(marks);
        List<int[]> agreeing = agreeing(patterns, marks);
        for (int g = 0; g < patterns.length; g++) {
            int fellow = groups.list().get(g).stream()
                    .filter(agreeing::contains)
                    .mapToInt(measure -> measure[0])
                    .findFirst()
                    .orElseThrow();
            for (int[] measure : groups.differing(g, marks)) {
                List<int[]> bound = new ArrayList<>(agreeing);
                bound.add(measure);
                int cost = keep(patterns, bound, PatternProblem.FORBIDDEN);
                if (!best.equals(before)) {
                    return differences();
                }
                int dearer = cost == Integer.MAX_VALUE
                        ? Outlier.IMPOSSIBLE
                        : problem.points(cost) - problem.points(best.cost());
                differences.add(new Outlier(measure[0], fellow, dearer));
            }
        }
        return differences;
    }

    private List<int[]> agreeing(int[][] patterns, Marks marks) {
        List<int[]> agreeing = new ArrayList<>();
        for (int g = 0; g < patterns.length; g++) {
            for (int[] measure : groups.list().get(g)) {
                if (Arrays.equals(patterns[g], groups.signs(measure, marks))) {
                    agreeing.add(measure);
                }
            }
        }
        return agreeing;
    }
}
