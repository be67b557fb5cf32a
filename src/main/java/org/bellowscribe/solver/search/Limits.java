package org.bellowscribe.solver.search;

import org.jspecify.annotations.Nullable;

/** What a pass of the search knows from bounds alone: the whole tune's, and each stretch's once it has been looked at. */
final class Limits {

    /** Room for the rounding of bounds that are not integers. */
    static final double SLACK = 1e-6;

    private final Problem problem;
    private final Graph graph;
    private final Heads heads;
    private final Node node;
    final Prices prices;
    private final Bounds whole;
    private @Nullable Stretches stretches;

    Limits(Setting setting, Node node) {
        this.problem = setting.problem();
        this.graph = setting.graph();
        this.heads = setting.heads();
        this.node = node;
        prices = new Prices(problem, graph, heads, node);
        whole = new Bounds(problem, graph, node, prices, null);
        for (int s = graph.segmentRoots.size() - 1; s >= 0; s--) {
            whole.lookAhead(s);
        }
        for (int s = 0; s < graph.segmentRoots.size(); s++) {
            whole.lookBack(s);
        }
    }

    /** Returns the lower bound of the tune. */
    int bound() {
        int root = graph.visit[0];
        int least = ceiling(whole.total(root) - prices.refund[root]);
        return stretches == null ? least : Math.max(stretches.total(), least);
    }

    static int ceiling(double value) {
        return (int) Math.min(Problem.NEVER, Math.ceil(value - SLACK));
    }

    /** Returns stretches to be looked at. */
    Stretches stretches() {
        return new Stretches(problem, graph, node, prices, whole);
    }

    /** Takes in what looking at the stretches has found. */
    void prove(Stretches settled) {
        stretches = settled;
    }

    /** Returns the bound of everything outside an event and what follows it, to which the price of air is added. */
    double outside(int e, int x, int c) {
        double inTune = whole.rest[e][x][c] - prices.refund[graph.visit[0]] + prices.refund[e];
        return stretches == null ? inTune : Math.max(inTune, stretches.outside(e, x, c) + stretches.others(e));
    }

    /** Returns the bound of the whole if an event takes an option. */
    double through(int e, int x, int c) {
        double inTune = whole.ahead[e][x][c] + whole.rest[e][x][c] - prices.refund[graph.visit[0]];
        return stretches == null ? inTune : Math.max(inTune, stretches.through(e, x, c) + stretches.others(e));
    }

    /**
     * Returns how much may be spent from an event's child on, pair cost included, if the event takes an option: the limit
     * less the bound of all else.
     */
    double spare(int e, int f, int x, int c, int limit) {
        double least = Bounds.NEVER;
        int[] pair = problem.pairs().get(graph.treeEdge[f])[c];
        for (int j = 0; j < pair.length; j++) {
            least = Math.min(least, pair[j] + whole.ahead[f][heads.context(f, x, j)][j]);
        }
        double inTune = whole.ahead[e][x][c] + whole.rest[e][x][c] - prices.refund[graph.visit[0]];
        return limit + SLACK - inTune + least;
    }

    /** Returns the bound from an event on. */
    double ahead(int e, int x, int c) {
        return whole.ahead[e][x][c];
    }
}
