package org.bellowscribe.solver.search;

/** The ceiling for a stretch that is looked at alone. */
final class StretchCeiling implements Ceiling {

    private final Problem problem;
    private final Graph graph;
    private final Prices prices;
    private final Stretches stretches;

    StretchCeiling(Problem problem, Graph graph, Prices prices, Stretches stretches) {
        this.problem = problem;
        this.graph = graph;
        this.prices = prices;
        this.stretches = stretches;
    }

    @Override
    public boolean allows(int e, int x, int c, int limit) {
        return stretches.through(e, x, c) <= limit + Limits.SLACK;
    }

    @Override
    public StepFunction clipEnding(int e, int x, int c, StepFunction ending, int limit) {
        double own = problem.options().get(e).get(c).cost() + prices.leastMove(e, c);
        ending.clip(stretches.outside(e, x, c) + own, prices.price[e], limit);
        return ending;
    }

    @Override
    public StepFunction clipBeginning(int e, int x, int c, StepFunction beginning, int limit) {
        beginning.clip(stretches.outside(e, x, c), prices.price[e], limit);
        return beginning;
    }

    // The price of air may give back what the moves cost.
    @Override
    public double room(int e, int x, int c, int limit) {
        return Bounds.NEVER;
    }

    @Override
    public double spare(int e, int f, int x, int c, int limit) {
        double least = Bounds.NEVER;
        int[] pair = problem.pairs().get(graph.treeEdge[f])[c];
        for (int j = 0; j < pair.length; j++) {
            least = Math.min(least, pair[j] + stretches.ahead(f, prices.heads().context(f, x, j), j));
        }
        return limit + Limits.SLACK - stretches.through(e, x, c) + least;
    }

    @Override
    public double ahead(int e, int x, int c) {
        return stretches.ahead(e, x, c);
    }
}
