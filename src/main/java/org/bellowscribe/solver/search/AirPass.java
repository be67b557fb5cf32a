package org.bellowscribe.solver.search;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One backward pass with openings. For each event, context and option it finds the least cost from there on as a function
 * of the opening (counted from the last anchor), leaving out whatever cannot be part of an answer within the limit.
 */
final class AirPass {

    /** All stretches together, not one alone. */
    static final int ALL = -1;

    private final Problem problem;
    private final Graph graph;
    private final Heads heads;
    private final Node node;
    private final Limits limits;
    private final int only;
    private final int limit;
    /** Least cost from the start of an event on; null where nothing is left. */
    final @Nullable StepFunction[][][] ahead;
    /** The same from its end on. */
    final @Nullable StepFunction[][][] after;

    private StepFunction scratch = new StepFunction(64);
    private StepFunction other = new StepFunction(64);
    private final StepFunction moved = new StepFunction(64);
    private int cost = Problem.NEVER;
    private long cells;

    AirPass(Problem problem, Graph graph, Heads heads, Node node, Limits limits, int only, int limit) {
        this.problem = problem;
        this.graph = graph;
        this.heads = heads;
        this.node = node;
        this.limits = limits;
        this.only = only;
        this.limit = limit;
        ahead = new StepFunction[graph.size][][];
        after = new StepFunction[graph.size][][];
    }

    /** Runs the pass and returns the least cost, or {@link Problem#NEVER} if it is above the limit. */
    int run() {
        for (int i = graph.size - 1; i >= 0; i--) {
            if (only == ALL || graph.segment[graph.visit[i]] == only) {
                event(graph.visit[i]);
            }
        }
        int root = only == ALL ? graph.visit[0] : graph.segmentRoots.get(only);
        int least = Problem.NEVER;
        for (@Nullable StepFunction[] row : ahead[root]) {
            for (StepFunction function : row) {
                least = function == null ? least : Math.min(least, function.at(0));
            }
        }
        cost = least <= limit ? least : Problem.NEVER;
        return cost;
    }

    /** Returns what the run returned. */
    int cost() {
        return cost;
    }

    /** Returns how many states were expanded. */
    long cells() {
        return cells;
    }

    private void event(int e) {
        int contexts = heads.contexts(e);
        int options = problem.options().get(e).size();
        ahead[e] = new StepFunction[contexts][options];
        after[e] = new StepFunction[contexts][options];
        for (int x = 0; x < contexts; x++) {
            for (int c = 0; c < options; c++) {
                boolean possible = node.allows(e, c) && !(heads.of(e) == e && x != c);
                if (possible && limits.through(e, x, c, only != ALL) <= limit + 1e-6) {
                    state(e, x, c);
                }
            }
        }
    }

    private void state(int e, int x, int c) {
        Option option = problem.options().get(e).get(c);
        double outside = limits.outside(e, x, c, only != ALL);
        double price = limits.prices.price[e];
        StepFunction ending = ending(e, x, c);
        if (ending == null || ending.isEmpty()) {
            return;
        }
        ending.clip(outside + option.cost() + limits.prices.leastMove(e, option), price, limit);
        if (ending.isEmpty()) {
            return;
        }
        StepFunction beginning = beginning(e, option, ending, outside);
        if (!beginning.isEmpty()) {
            after[e][x][c] = ending;
            ahead[e][x][c] = beginning.trimmed();
            cells++;
        }
    }

    // Openings at which an event may end, counted from its reference, at the cost of what follows.
    private @Nullable StepFunction ending(int e, int x, int c) {
        int reference = graph.referenceIndex(e);
        int low = problem.lowest() - node.high[reference];
        int high = problem.highest() - node.low[reference];
        if (problem.again() && e == graph.last) {
            low = Math.max(low, -problem.margin() - node.sumHigh[reference]);
            high = Math.min(high, problem.margin() - node.sumLow[reference]);
        }
        int jumps = 0;
        for (int k : graph.jumpsFrom.get(e)) {
            jumps += Bounds.jumpCost(problem, heads, node, k, x, c);
        }
        if (graph.anchor[graph.after(e)]) {
            int cost = jumps + atAnchor(e, x, c);
            int end = graph.anchorIndex[graph.after(e)];
            return StepFunction.constant(
                    Math.max(low, node.leastRise(graph, end, reference)),
                    Math.min(high, node.mostRise(graph, end, reference)),
                    cost);
        }
        StepFunction sum = StepFunction.constant(low, high, jumps);
        for (int f : graph.children.get(e)) {
            sum = StepFunction.sum(sum, following(e, f, x, c));
            if (sum.isEmpty()) {
                return null;
            }
        }
        return sum;
    }

    // What follows an anchor begins at a fixed opening, so it is a number.
    private int atAnchor(int e, int x, int c) {
        int sum = 0;
        for (int f : graph.children.get(e)) {
            int[] pair = problem.pairs().get(graph.treeEdge[f])[c];
            int least = Problem.NEVER;
            for (int j = 0; j < pair.length; j++) {
                if (only != ALL && graph.segment[f] != only) {
                    least = node.allows(f, j) ? Math.min(least, pair[j]) : least;
                } else {
                    StepFunction next = ahead[f][heads.context(f, x, j)][j];
                    least = next == null ? least : Math.min(least, pair[j] + next.at(0));
                }
            }
            sum = Math.min(Problem.NEVER, sum + least);
        }
        return sum;
    }

    private StepFunction following(int e, int f, int x, int c) {
        int[] pair = problem.pairs().get(graph.treeEdge[f])[c];
        double spare = limits.spare(e, f, x, c, only != ALL, limit);
        scratch.clear();
        for (int j = 0; j < pair.length; j++) {
            int y = heads.context(f, x, j);
            StepFunction next = ahead[f][y][j];
            if (next != null && pair[j] + limits.ahead(f, y, j, only != ALL) <= spare) {
                other.setLowest(scratch, next, pair[j]);
                swap();
            }
        }
        return scratch.trimmed();
    }

    // A move is cut to what can be part of an answer before it is merged: of most moves nothing is left.
    private StepFunction beginning(int e, Option option, StepFunction ending, double outside) {
        double price = limits.prices.price[e];
        int reference = graph.referenceIndex(e);
        int low = problem.lowest() - node.high[reference];
        int high = problem.highest() - node.low[reference];
        scratch.clear();
        List<Move> moves = option.moves();
        for (int m = 0; m < moves.size(); m++) {
            Move move = moves.get(m);
            int cost = option.cost() + move.cost();
            // A push lowers the opening: it began higher than it ends.
            int shiftFrom = option.sign() > 0 ? -move.high() : move.low();
            int shiftTo = option.sign() > 0 ? -move.low() : move.high();
            moved.clear();
            for (int i = 0; i < ending.size; i++) {
                int start = Math.max(low, ending.from[i] + shiftFrom);
                int end = Math.min(high, ending.to[i] + shiftTo);
                if (start <= end) {
                    moved.appendLowest(start, end, ending.value[i] + cost);
                }
            }
            moved.clip(outside, price, limit);
            if (!moved.isEmpty()) {
                other.setLowest(scratch, moved, 0);
                swap();
            }
        }
        return scratch;
    }

    private void swap() {
        StepFunction kept = scratch;
        scratch = other;
        other = kept;
    }
}
