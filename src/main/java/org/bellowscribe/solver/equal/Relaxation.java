package org.bellowscribe.solver.equal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bellowscribe.solver.search.Move;
import org.bellowscribe.solver.search.Option;
import org.bellowscribe.solver.search.Problem;
import org.bellowscribe.solver.search.Zones;

/**
 * Lagrangian relaxation. The measures of a group go their own ways in the tune's subproblem; each group as a whole chooses
 * marks in a subproblem of its own; {@link Multipliers} tie the two. For any multipliers both together cost no more than
 * the best answer of the block, and good ones bring them close to it. Costs are counted at least as finely as in quarters of a
 * point.
 */
final class Relaxation {

    private static final int QUARTERS = 4;

    /** How much finer costs are counted here than in the problem. */
    private final int scale;

    private final Problem problem;
    private final EqualGroups groups;
    private final Kinds kinds;
    private final Block block;
    private final Multipliers multipliers;
    private final List<int[][]> scaledPairs;
    private final List<Zones> scaledZones;

    /** Creates the relaxation of the whole problem, with multipliers of 0. */
    Relaxation(Problem problem, EqualGroups groups, Kinds kinds) {
        scale = Math.max(1, QUARTERS / problem.unit());
        this.problem = problem;
        this.groups = groups;
        this.kinds = kinds;
        block = new Block(groups, kinds);
        multipliers = new Multipliers(kinds, problem.size(), scale * groups.price());
        scaledPairs = problem.pairs().stream()
                .map(points -> Arrays.stream(points)
                        .map(row -> Arrays.stream(row).map(p -> scale * p).toArray())
                        .toArray(int[][]::new))
                .toList();
        scaledZones = problem.zones().stream().map(zones -> zones.times(scale)).toList();
    }

    private Relaxation(Relaxation wider, Block narrower) {
        scale = wider.scale;
        problem = wider.problem;
        groups = wider.groups;
        kinds = wider.kinds;
        block = narrower;
        multipliers = wider.multipliers.copy();
        scaledPairs = wider.scaledPairs;
        scaledZones = wider.scaledZones;
        for (int g = 0; g < groups.list().size(); g++) {
            boolean isNew = block.isNarrow(g) && !wider.block.isNarrow(g);
            for (int[] measure : groups.list().get(g)) {
                if (block.isSettled(g)) {
                    multipliers.settle(measure);
                } else if (isNew) {
                    multipliers.share(measure);
                }
            }
        }
    }

    /** Returns the relaxation of a narrower block, with multipliers to begin from. */
    Relaxation narrowed(Block narrower) {
        return new Relaxation(this, narrower);
    }

    int scale() {
        return scale;
    }

    Block block() {
        return block;
    }

    /** Returns the tune's subproblem; it costs {@link #shift()} too much. */
    PatternProblem tune() {
        List<List<Option>> options = new ArrayList<>();
        for (int e = 0; e < problem.size(); e++) {
            int shift = multipliers.shift(e);
            List<Option> given = problem.options().get(e);
            List<Option> scaled = new ArrayList<>();
            for (int c = 0; c < given.size(); c++) {
                List<Move> moves = new ArrayList<>();
                for (Move move : given.get(c).moves()) {
                    int kind = kinds.of(e, c, moves.size());
                    int extra = kind < 0 ? 0 : shift + multipliers.of(e, kind);
                    moves.add(new Move(scale * move.cost() + extra, move.low(), move.high()));
                }
                scaled.add(new Option(given.get(c).sign(), scale * given.get(c).cost(), moves));
            }
            options.add(scaled);
        }
        List<PatternProblem.Wanted> wanted = new ArrayList<>();
        for (int g = 0; g < groups.list().size(); g++) {
            for (int[] measure : groups.list().get(g)) {
                int leaving = multipliers.ofLeaving(measure);
                if (block.isNarrow(g) && leaving > 0) {
                    wanted.add(new PatternProblem.Wanted(measure, leaving, block.keeps(g, measure)));
                }
            }
        }
        return new PatternProblem(problem.with(options, scaledPairs, scaledZones), wanted);
    }

    /** Returns by how much the tune's subproblem costs too much. */
    long shift() {
        long sum = 0;
        for (int e = 0; e < problem.size(); e++) {
            sum += multipliers.shift(e);
        }
        return sum;
    }

    /**
     * Solves the groups' subproblems and returns their cost.
     *
     * @param marks what the tune's subproblem plays: of choices as cheap, one that is near to it is taken
     * @param chosen takes down what is chosen
     */
    long solveGroups(Marks marks, GroupMarks chosen) {
        long cost = 0;
        for (int g = 0; g < groups.list().size(); g++) {
            List<int[]> group = groups.list().get(g);
            for (int from = 0; from < group.size() - 1 && !block.isSettled(g); from += GroupSubproblem.LARGEST) {
                List<int[]> part = group.subList(from, Math.min(group.size(), from + GroupSubproblem.LARGEST));
                boolean isPart = part.size() < group.size();
                cost += new GroupSubproblem(multipliers, part, isPart, block.of(g)).solve(marks, chosen);
            }
        }
        return cost;
    }

    /** Returns the square of the slope of the bound: how often tune and groups disagree. */
    int slope(Marks marks, GroupMarks chosen) {
        int sum = 0;
        for (int e = 0; e < problem.size(); e++) {
            sum += chosen.kind()[e] >= 0 && kinds.played(e, marks) != chosen.kind()[e] ? 2 : 0;
        }
        for (int g = 0; g < groups.list().size(); g++) {
            for (int[] measure : groups.list().get(g)) {
                sum += disagreement(g, measure, marks, chosen) == 0 ? 0 : 1;
            }
        }
        return sum;
    }

    // 1 if the tune lets a measure leave what is allowed and the group does not let it differ, -1 the other way round.
    private int disagreement(int g, int[] measure, Marks marks, GroupMarks chosen) {
        if (!block.isNarrow(g) || block.isSettled(g)) {
            return 0;
        }
        return (block.isLeft(g, measure, marks) ? 1 : 0) - (chosen.differs()[measure[0]] ? 1 : 0);
    }

    /** Takes a step along the slope: what the tune plays gets dearer, and what its groups would play cheaper. */
    void follow(Marks marks, GroupMarks chosen, double step) {
        for (int e = 0; e < problem.size(); e++) {
            int played = kinds.played(e, marks);
            int wanted = chosen.kind()[e];
            if (wanted >= 0 && played != wanted) {
                multipliers.move(e, wanted, played, step);
            }
        }
        for (int g = 0; g < groups.list().size(); g++) {
            for (int[] measure : groups.list().get(g)) {
                multipliers.raise(measure, step * disagreement(g, measure, marks, chosen));
            }
        }
    }
}
