package org.bellowscribe.solver.alike;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bellowscribe.solver.search.Move;
import org.bellowscribe.solver.search.Option;
import org.bellowscribe.solver.search.Problem;
import org.jspecify.annotations.Nullable;

/**
 * Lagrangian prices. The measures of a group go their own ways, but each way to mark an event of one of them has a toll;
 * apart from the tune, each group as a whole chooses marks too and gets the tolls back. For any tolls the tune and the
 * groups together cost no more than the best answer, and good tolls bring them close to it. Costs are counted in quarters
 * of a point.
 */
final class Tolls {

    /** Quarters of a point. */
    static final int SCALE = 4;

    // A group tries every set of measures that differ; a larger one is cut, which keeps the bound true.
    private static final int LARGEST = 6;

    private final Problem problem;
    private final int price;
    private final List<List<int[]>> groups = new ArrayList<>();
    /** For each event of a group [option][move] a number for the sign, the same in all measures of the group. */
    private final int[] @Nullable [][] kind;
    /** Toll of each kind of each event; none outside the groups. */
    private final double[][] toll;

    private final List<int[][]> scaledPairs;

    Tolls(Problem problem, Twins twins) {
        this.problem = problem;
        price = SCALE * twins.price();
        kind = new int[problem.size()][][];
        toll = new double[problem.size()][0];
        for (List<int[]> group : twins.groups()) {
            for (int from = 0; from < group.size() - 1; from += LARGEST) {
                groups.add(group.subList(from, Math.min(group.size(), from + LARGEST)));
            }
        }
        for (List<int[]> group : groups) {
            for (int i = 0; i < group.get(0).length; i++) {
                number(group, i, twins);
            }
        }
        scaledPairs = problem.pairs().stream()
                .map(points -> Arrays.stream(points)
                        .map(row -> Arrays.stream(row).map(p -> SCALE * p).toArray())
                        .toArray(int[][]::new))
                .toList();
    }

    private void number(List<int[]> group, int i, Twins twins) {
        List<Integer> known = new ArrayList<>();
        for (int[] measure : group) {
            kind[measure[i]] = Arrays.stream(twins.signs()[measure[i]])
                    .map(ofOption -> Arrays.stream(ofOption)
                            .map(sign -> {
                                if (!known.contains(sign)) {
                                    known.add(sign);
                                }
                                return known.indexOf(sign);
                            })
                            .toArray())
                    .toArray(int[][]::new);
        }
        for (int[] measure : group) {
            toll[measure[i]] = new double[known.size()];
        }
    }

    private int toll(int e, int k) {
        return (int) Math.round(toll[e][k]);
    }

    // Costs must not be negative: all ways to mark an event pay as much more.
    private int shift(int e) {
        int least = 0;
        for (int k = 0; k < toll[e].length; k++) {
            least = Math.min(least, toll(e, k));
        }
        return -least;
    }

    /** Returns the tune by itself, with tolls, in quarters of a point; it costs {@link #shift()} too much. */
    Problem tune() {
        List<List<Option>> options = new ArrayList<>();
        for (int e = 0; e < problem.size(); e++) {
            int shift = shift(e);
            List<Option> given = problem.options().get(e);
            List<Option> scaled = new ArrayList<>();
            for (int c = 0; c < given.size(); c++) {
                List<Move> moves = new ArrayList<>();
                for (Move move : given.get(c).moves()) {
                    int[][] kinds = kind[e];
                    int extra = kinds == null ? 0 : shift + toll(e, kinds[c][moves.size()]);
                    moves.add(new Move(SCALE * move.cost() + extra, move.low(), move.high()));
                }
                scaled.add(new Option(given.get(c).sign(), SCALE * given.get(c).cost(), moves));
            }
            options.add(scaled);
        }
        return problem.with(options, scaledPairs);
    }

    /** Returns by how much the tune with tolls costs too much. */
    long shift() {
        long sum = 0;
        for (int e = 0; e < problem.size(); e++) {
            sum += shift(e);
        }
        return sum;
    }

    /**
     * What the groups choose.
     *
     * @param kind for each event of a group the kind of its marks
     * @param cost what that costs
     */
    record Whole(int[] kind, long cost) {}

    /** Returns the groups' own cheapest choice; where several are as cheap, one that is near to what the tune plays. */
    Whole whole(Marks marks) {
        int[] chosen = new int[problem.size()];
        long cost = 0;
        for (List<int[]> group : groups) {
            cost += whole(group, marks, chosen);
        }
        return new Whole(chosen, cost);
    }

    private long whole(List<int[]> group, Marks marks, int[] chosen) {
        long best = Long.MAX_VALUE;
        int bestSet = 0;
        int[] trial = chosen.clone();
        for (int differ = 0; differ < (1 << group.size()) - 1; differ++) {
            long cost = (long) Integer.bitCount(differ) * price;
            for (int i = 0; i < group.get(0).length; i++) {
                cost += choose(group, i, differ, marks, trial);
            }
            if (cost < best) {
                best = cost;
                bestSet = differ;
            }
        }
        for (int i = 0; i < group.get(0).length; i++) {
            choose(group, i, bestSet, marks, chosen);
        }
        return best;
    }

    // The measures in the set choose for themselves, the others choose together.
    private long choose(List<int[]> group, int i, int differ, Marks marks, int[] chosen) {
        int kinds = toll[group.get(0)[i]].length;
        long[] given = new long[kinds];
        int[] votes = new int[kinds];
        long cost = 0;
        for (int j = 0; j < group.size(); j++) {
            int e = group.get(j)[i];
            if ((differ >> j & 1) == 1) {
                chosen[e] = dearest(e, played(e, marks));
                cost -= toll(e, chosen[e]);
            } else {
                votes[played(e, marks)]++;
                for (int k = 0; k < kinds; k++) {
                    given[k] += toll(e, k);
                }
            }
        }
        int common = 0;
        for (int k = 1; k < kinds; k++) {
            boolean nearer = given[k] == given[common] && votes[k] > votes[common];
            common = given[k] > given[common] || nearer ? k : common;
        }
        for (int j = 0; j < group.size(); j++) {
            int e = group.get(j)[i];
            chosen[e] = (differ >> j & 1) == 1 ? chosen[e] : common;
        }
        return cost - given[common];
    }

    private int dearest(int e, int first) {
        int dearest = first;
        for (int k = 0; k < toll[e].length; k++) {
            dearest = toll(e, k) > toll(e, dearest) ? k : dearest;
        }
        return dearest;
    }

    private int played(int e, Marks marks) {
        int[][] kinds = kind[e];
        return kinds == null ? -1 : kinds[marks.option()[e]][marks.move()[e]];
    }

    /** Returns the square of the slope of the bound: twice the number of events at which tune and groups disagree. */
    int slope(Marks marks, Whole whole) {
        int sum = 0;
        for (int e = 0; e < problem.size(); e++) {
            sum += kind[e] != null && played(e, marks) != whole.kind()[e] ? 2 : 0;
        }
        return sum;
    }

    /** Raises the toll on what the tune plays and lowers it on what its groups would, wherever the two disagree. */
    void follow(Marks marks, Whole whole, double step) {
        for (int e = 0; e < problem.size(); e++) {
            int played = played(e, marks);
            if (kind[e] != null && played != whole.kind()[e]) {
                toll[e][played] += step;
                toll[e][whole.kind()[e]] -= step;
            }
        }
    }
}
