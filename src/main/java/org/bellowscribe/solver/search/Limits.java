package org.bellowscribe.solver.search;

/**
 * What a pass of the search knows from bounds alone: the whole tune's, each stretch's, and the proved least cost of each
 * stretch by itself.
 */
final class Limits {

    /** Room for the rounding of bounds that are not integers. */
    static final double SLACK = 1e-6;

    private final Problem problem;
    private final Graph graph;
    private final Heads heads;
    final Prices prices;
    final Bounds whole;
    final Bounds stretch;
    final Beyond beyond;
    private final int[] proved;
    private final int[] provedBelow;
    private int provedSum;

    Limits(Problem problem, Graph graph, Heads heads, Node node) {
        this.problem = problem;
        this.graph = graph;
        this.heads = heads;
        prices = new Prices(problem, graph, heads, node);
        whole = new Bounds(problem, graph, node, prices, null);
        beyond = new Beyond(graph, heads, whole);
        stretch = graph.segmentRoots.size() == 1 ? whole : new Bounds(problem, graph, node, prices, beyond);
        proved = new int[graph.segmentRoots.size()];
        provedBelow = new int[graph.size];
    }

    /** Returns the lower bound of one stretch; at least {@link Problem#NEVER} if it has no answer at all. */
    int segmentBound(int segment) {
        int root = graph.segmentRoots.get(segment);
        return ceiling(stretch.total(root) - prices.refundLocal[root]);
    }

    /** Returns the lower bound of the tune. */
    int bound() {
        int root = graph.visit[0];
        return Math.max(provedSum, ceiling(whole.total(root) - prices.refund[root]));
    }

    private static int ceiling(double value) {
        return (int) Math.min(Problem.NEVER, Math.ceil(value - SLACK));
    }

    /** Tells the least cost of every stretch by itself. */
    void prove(int[] costs) {
        System.arraycopy(costs, 0, proved, 0, costs.length);
        provedSum = 0;
        for (int value : costs) {
            provedSum += value;
        }
        for (int i = graph.size - 1; i >= 0; i--) {
            int e = graph.visit[i];
            provedBelow[e] = 0;
            for (int f : graph.children.get(e)) {
                provedBelow[e] +=
                        provedBelow[f] + (graph.segment[f] == graph.segment[e] ? 0 : proved[graph.segment[f]]);
            }
        }
    }

    /** Returns the bound of everything outside an event and what follows it, to which the price of air is added. */
    double outside(int e, int x, int c, boolean alone) {
        int root = graph.segmentRoots.get(graph.segment[e]);
        double inStretch = stretch.rest[e][x][c] - prices.refundLocal[root] + prices.refundLocal[e];
        if (alone) {
            return inStretch;
        }
        int start = graph.visit[0];
        double inTune = whole.rest[e][x][c] - prices.refund[start] + prices.refund[e];
        return Math.max(inTune, inStretch + provedSum - proved[graph.segment[e]] - provedBelow[e]);
    }

    /** Returns the bound of the whole if an event takes an option. */
    double through(int e, int x, int c, boolean alone) {
        int root = graph.segmentRoots.get(graph.segment[e]);
        double inStretch = stretch.ahead[e][x][c] + stretch.rest[e][x][c] - prices.refundLocal[root];
        if (alone) {
            return inStretch;
        }
        double inTune = whole.ahead[e][x][c] + whole.rest[e][x][c] - prices.refund[graph.visit[0]];
        return Math.max(inTune, inStretch + provedSum - proved[graph.segment[e]]);
    }

    /**
     * Returns how much may be spent from an event's child on, pair cost included, if the event takes an option: the limit
     * less the bound of all else.
     */
    double spare(int e, int f, int x, int c, boolean alone, int limit) {
        Bounds bounds = alone ? stretch : whole;
        double least = Bounds.NEVER;
        int[] pair = problem.pairs().get(graph.treeEdge[f])[c];
        for (int j = 0; j < pair.length; j++) {
            least = Math.min(least, pair[j] + bounds.ahead[f][heads.context(f, x, j)][j]);
        }
        int root = alone ? graph.segmentRoots.get(graph.segment[e]) : graph.visit[0];
        double refund = alone ? prices.refundLocal[root] : prices.refund[root];
        return limit + SLACK - (bounds.ahead[e][x][c] + bounds.rest[e][x][c] - refund) + least;
    }

    /** Returns the bound from an event on. */
    double ahead(int e, int x, int c, boolean alone) {
        return (alone ? stretch : whole).ahead[e][x][c];
    }
}
