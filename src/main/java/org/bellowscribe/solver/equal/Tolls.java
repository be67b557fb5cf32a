package org.bellowscribe.solver.equal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bellowscribe.solver.search.Move;
import org.bellowscribe.solver.search.Option;
import org.bellowscribe.solver.search.Problem;

/**
 * Lagrangian prices. The measures of a group go their own ways, but each way to mark an event of one of them has a toll;
 * apart from the tune, each group as a whole chooses marks too and gets the tolls back. For any tolls the tune and the
 * groups together cost no more than the best answer, and good tolls bring them close to it. Where it has been said which
 * marks a group may have, the tune charges a measure that leaves them some of the price, and the group the rest. Costs are
 * counted in quarters of a point.
 */
final class Tolls {

    /** Quarters of a point. */
    static final int SCALE = 4;

    private final Problem problem;
    private final Twins twins;
    private final Kinds kinds;
    private final Allowed allowed;
    private final double[][] toll;
    /** For the first event of a measure the part of the price that the tune charges it. */
    private final double[] charge;

    private final List<int[][]> scaledPairs;

    /** Creates tolls of 0 that allow everything. */
    Tolls(Problem problem, Twins twins, Kinds kinds) {
        this.problem = problem;
        this.twins = twins;
        this.kinds = kinds;
        allowed = new Allowed(twins, kinds);
        toll = new double[problem.size()][];
        Arrays.setAll(toll, e -> new double[kinds.count(e)]);
        charge = new double[problem.size()];
        scaledPairs = problem.pairs().stream()
                .map(points -> Arrays.stream(points)
                        .map(row -> Arrays.stream(row).map(p -> SCALE * p).toArray())
                        .toArray(int[][]::new))
                .toList();
    }

    private Tolls(Tolls wider, Allowed narrower) {
        problem = wider.problem;
        twins = wider.twins;
        kinds = wider.kinds;
        allowed = narrower;
        toll = new double[problem.size()][];
        Arrays.setAll(toll, e -> wider.toll[e].clone());
        charge = wider.charge.clone();
        scaledPairs = wider.scaledPairs;
        for (int g = 0; g < twins.groups().size(); g++) {
            boolean isNew = allowed.isNarrow(g) && !wider.allowed.isNarrow(g);
            for (int[] measure : twins.groups().get(g)) {
                charge[measure[0]] = allowed.isSettled(g) ? price() : isNew ? price() / 2.0 : charge[measure[0]];
                for (int e : measure) {
                    Arrays.fill(toll[e], 0, allowed.isSettled(g) ? toll[e].length : 0, 0);
                }
            }
        }
    }

    /** Returns a copy that allows less. */
    Tolls narrowed(Allowed narrower) {
        return new Tolls(this, narrower);
    }

    Allowed allowed() {
        return allowed;
    }

    private int price() {
        return SCALE * twins.price();
    }

    private int toll(int e, int k) {
        return (int) Math.round(toll[e][k]);
    }

    private int charge(int[] measure) {
        return (int) Math.round(charge[measure[0]]);
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
    PatternProblem tune() {
        List<List<Option>> options = new ArrayList<>();
        for (int e = 0; e < problem.size(); e++) {
            int shift = shift(e);
            List<Option> given = problem.options().get(e);
            List<Option> scaled = new ArrayList<>();
            for (int c = 0; c < given.size(); c++) {
                List<Move> moves = new ArrayList<>();
                for (Move move : given.get(c).moves()) {
                    int kind = kinds.of(e, c, moves.size());
                    int extra = kind < 0 ? 0 : shift + toll(e, kind);
                    moves.add(new Move(SCALE * move.cost() + extra, move.low(), move.high()));
                }
                scaled.add(new Option(given.get(c).sign(), SCALE * given.get(c).cost(), moves));
            }
            options.add(scaled);
        }
        List<PatternProblem.Wanted> wanted = new ArrayList<>();
        for (int g = 0; g < twins.groups().size(); g++) {
            for (int[] measure : twins.groups().get(g)) {
                if (allowed.isNarrow(g) && charge(measure) > 0) {
                    wanted.add(new PatternProblem.Wanted(measure, charge(measure), allowed.keeps(g, measure)));
                }
            }
        }
        return new PatternProblem(problem.with(options, scaledPairs), wanted);
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
     * @param kind for each event the kind of its marks; -1 where no group chooses
     * @param differs for the first event of a measure true if it is to differ
     * @param cost what that costs
     */
    record Whole(int[] kind, boolean[] differs, long cost) {}

    /** Returns the groups' own cheapest choice; where several are as cheap, one that is near to what the tune plays. */
    Whole whole(Marks marks) {
        Whole empty = new Whole(new int[problem.size()], new boolean[problem.size()], 0);
        Arrays.fill(empty.kind(), -1);
        long cost = 0;
        for (int g = 0; g < twins.groups().size(); g++) {
            List<int[]> group = twins.groups().get(g);
            for (int from = 0; from < group.size() - 1 && !allowed.isSettled(g); from += GroupChoice.LARGEST) {
                List<int[]> part = group.subList(from, Math.min(group.size(), from + GroupChoice.LARGEST));
                cost += new GroupChoice(this, kinds, part, group, allowed.of(g), marks).choose(empty);
            }
        }
        return new Whole(empty.kind(), empty.differs(), cost);
    }

    /** Returns what the group gets back for marks of a kind. */
    int paidBack(int e, int k) {
        return toll(e, k);
    }

    /** Returns what the group pays for a measure that differs. */
    int restOfPrice(int[] measure) {
        return price() - charge(measure);
    }

    /** Returns the square of the slope of the bound: how often tune and groups disagree. */
    int slope(Marks marks, Whole whole) {
        int sum = 0;
        for (int e = 0; e < problem.size(); e++) {
            sum += whole.kind()[e] >= 0 && kinds.played(e, marks) != whole.kind()[e] ? 2 : 0;
        }
        for (int g = 0; g < twins.groups().size(); g++) {
            for (int[] measure : twins.groups().get(g)) {
                sum += disagreement(g, measure, marks, whole) == 0 ? 0 : 1;
            }
        }
        return sum;
    }

    // 1 if the tune lets a measure leave what is allowed and the group does not let it differ, -1 the other way round.
    private int disagreement(int g, int[] measure, Marks marks, Whole whole) {
        if (!allowed.isNarrow(g) || allowed.isSettled(g)) {
            return 0;
        }
        return (allowed.isLeft(g, measure, marks) ? 1 : 0) - (whole.differs()[measure[0]] ? 1 : 0);
    }

    /** Raises the toll on what the tune plays and lowers it on what its groups would, wherever the two disagree. */
    void follow(Marks marks, Whole whole, double step) {
        for (int e = 0; e < problem.size(); e++) {
            int played = kinds.played(e, marks);
            int chosen = whole.kind()[e];
            if (chosen >= 0 && played != chosen) {
                toll[e][played] += step;
                toll[e][chosen] -= step;
            }
        }
        for (int g = 0; g < twins.groups().size(); g++) {
            for (int[] measure : twins.groups().get(g)) {
                double moved = charge[measure[0]] + step * disagreement(g, measure, marks, whole);
                charge[measure[0]] = Math.max(0, Math.min(price(), moved));
            }
        }
    }
}
