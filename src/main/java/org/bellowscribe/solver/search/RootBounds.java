package org.bellowscribe.solver.search;

import org.jspecify.annotations.Nullable;

/** What is known of the root from bounds alone: the whole tune's, and each stretch's once it has been looked at. */
final class RootBounds implements Surroundings {

    private final Setting setting;
    private final Problem problem;
    private final Graph graph;
    private final Node node;
    final Prices prices;
    private final Bounds whole;
    private @Nullable Stretches stretches;

    RootBounds(Setting setting, Node node) {
        this.setting = setting;
        this.problem = setting.problem();
        this.graph = setting.graph();
        this.node = node;
        prices = new Prices(problem, graph, node);
        whole = new Bounds(setting, node, prices, null);
        for (int s = graph.firsts.size() - 1; s >= 0; s--) {
            whole.lookAhead(s);
        }
        for (int s = 0; s < graph.firsts.size(); s++) {
            whole.lookBack(s);
        }
    }

    /** Returns the lower bound of the tune. */
    int bound() {
        int root = graph.visit[0];
        int least = Surroundings.roundedUp(whole.total(root) - prices.refund[root]);
        return stretches == null ? least : Math.max(stretches.total(), least);
    }

    /** Returns the ceiling of a pass over the whole tune that counts openings from the anchors. */
    Ceiling ceiling() {
        return ceiling(Frame.fromAnchors(setting, node));
    }

    /** Returns the ceiling of a pass over the whole tune. */
    Ceiling ceiling(Frame frame) {
        return new PricedCeiling(problem, prices, this, frame);
    }

    /** Returns stretches to be looked at. */
    Stretches stretches() {
        return new Stretches(setting, node, prices, whole);
    }

    /** Takes in what looking at the stretches has found. */
    void prove(Stretches settled) {
        stretches = settled;
    }

    @Override
    public double outside(int e, int x, int c) {
        double inTune = whole.rest[e][x][c] - prices.refund[graph.visit[0]] + prices.refund[e];
        return stretches == null ? inTune : Math.max(inTune, stretches.outside(e, x, c) + stretches.others(e));
    }

    @Override
    public double through(int e, int x, int c) {
        double inTune = whole.ahead[e][x][c] + whole.rest[e][x][c] - prices.refund[graph.visit[0]];
        return stretches == null ? inTune : Math.max(inTune, stretches.through(e, x, c) + stretches.others(e));
    }

    @Override
    public double spare(int e, int f, int x, int c, int limit) {
        double inTune = whole.ahead[e][x][c] + whole.rest[e][x][c] - prices.refund[graph.visit[0]];
        return limit + SLACK - inTune + whole.leastOnward(f, x, c);
    }

    @Override
    public double ahead(int e, int x, int c) {
        return whole.ahead[e][x][c];
    }
}
