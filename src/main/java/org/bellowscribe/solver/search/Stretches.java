package org.bellowscribe.solver.search;

/**
 * Bounds of each stretch by itself, with what lies {@link Beyond} it. Found from the last stretch to the first: when a
 * stretch is done, the one before it knows exactly, or nearly, what going on to it costs. Then the least that the first
 * stretch costs is the least of the tune, as long as nothing is asked of the openings between the stretches.
 */
final class Stretches implements Surroundings {

    private final Graph graph;
    private final Prices prices;
    private final Bounds bounds;
    private final Beyond beyond;
    private int total;

    Stretches(Setting setting, Node node, Prices prices, Bounds whole) {
        this.graph = setting.graph();
        this.prices = prices;
        beyond = new Beyond(graph, setting.heads(), whole.ahead);
        bounds = new Bounds(setting, node, prices, beyond);
    }

    Beyond beyond() {
        return beyond;
    }

    /** Looks at a stretch, when all that follow it are settled, and returns the lower bound of what it costs. */
    int look(int stretch) {
        bounds.look(stretch);
        int root = graph.firsts.get(stretch);
        return Surroundings.roundedUp(bounds.total(root) - prices.refundLocal[root]);
    }

    /** Learns from a pass over a stretch what it costs to go on to it. */
    void settle(int stretch, AirPass pass) {
        int root = graph.firsts.get(stretch);
        if (graph.parent[root] < 0) {
            total = pass.cost();
        } else {
            beyond.learn(root, pass.ahead[root], pass.limit());
            bounds.look(stretch);
        }
    }

    /** Returns the least of the tune. */
    int total() {
        return total;
    }

    @Override
    public double outside(int e, int x, int c) {
        int root = graph.firsts.get(graph.stretch[e]);
        return bounds.rest[e][x][c] - prices.refundLocal[root] + prices.refundLocal[e];
    }

    @Override
    public double through(int e, int x, int c) {
        int root = graph.firsts.get(graph.stretch[e]);
        return bounds.ahead[e][x][c] + bounds.rest[e][x][c] - prices.refundLocal[root];
    }

    /** Returns what all the other stretches cost at least beside one of an event. */
    int others(int e) {
        return graph.parent[graph.firsts.get(graph.stretch[e])] < 0 ? 0 : total;
    }

    @Override
    public double spare(int e, int f, int x, int c, int limit) {
        return limit + Surroundings.SLACK - through(e, x, c) + bounds.leastOnward(f, x, c);
    }

    @Override
    public double ahead(int e, int x, int c) {
        return bounds.ahead[e][x][c];
    }
}
