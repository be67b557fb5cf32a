package org.bellowscribe.solver.search;

import org.jspecify.annotations.Nullable;

/**
 * How a pass over a node counts openings. From the last anchor: then every loop comes back to where it began, but how open
 * the bellows really are is known as an interval only. Or as they are: then the ends of the bellows and what an opening
 * costs are exact, but a loop comes back to its anchor's interval only. Both are true bounds; the narrower the node, the
 * nearer they are to each other.
 */
final class Frame {

    // A loop that may miss its anchor by so small a part of the bellows hardly gains by it.
    private static final int PARTS = 8;

    private final Problem problem;
    private final Graph graph;
    private final Node node;
    private final boolean asTheyAre;

    private Frame(Setting setting, Node node, boolean asTheyAre) {
        this.problem = setting.problem();
        this.graph = setting.graph();
        this.node = node;
        this.asTheyAre = asTheyAre;
    }

    /** Returns the frame that counts openings from the last anchor. */
    static Frame fromAnchors(Setting setting, Node node) {
        return new Frame(setting, node, false);
    }

    /** Returns the frame that takes openings as they are. */
    static Frame asTheyAre(Setting setting, Node node) {
        return new Frame(setting, node, true);
    }

    /** Returns the frame in which the bound of a node is the better one, as far as that is known beforehand. */
    static Frame of(Setting setting, Node node) {
        Graph graph = setting.graph();
        Problem problem = setting.problem();
        boolean narrow = (long) PARTS * (node.high[0] - node.low[0]) < problem.highest() - problem.lowest();
        return new Frame(setting, node, graph.anchors.size() == 1 && (node.asTheyAre || narrow));
    }

    Node node() {
        return node;
    }

    boolean isAsTheyAre() {
        return asTheyAre;
    }

    /** Returns true if what follows an event is counted from another place than what leads to it. */
    boolean isCut(int e) {
        return !asTheyAre && graph.anchor[graph.after(e)];
    }

    private int lowest(int e) {
        return asTheyAre ? problem.lowest() : problem.lowest() - node.high[graph.referenceIndex(e)];
    }

    private int highest(int e) {
        return asTheyAre ? problem.highest() : problem.highest() - node.low[graph.referenceIndex(e)];
    }

    /** Returns the smallest and the largest opening at which an event may begin. */
    int[] begin(int e) {
        int low = lowest(e);
        int high = highest(e);
        int place = graph.before(e);
        if (!graph.anchor[place]) {
            return new int[] {low, high};
        }
        int anchor = graph.anchorIndex[place];
        return new int[] {
            Math.max(low, asTheyAre ? node.low[anchor] : 0), Math.min(high, asTheyAre ? node.high[anchor] : 0)
        };
    }

    /** Returns the smallest and the largest opening at which an event may end. */
    int[] end(int e) {
        int low = lowest(e);
        int high = highest(e);
        int reference = graph.referenceIndex(e);
        if (problem.again() && e == graph.last) {
            low = Math.max(
                    low, asTheyAre ? node.low[0] - problem.margin() : -problem.margin() - node.sumHigh[reference]);
            high = Math.min(
                    high, asTheyAre ? node.high[0] + problem.margin() : problem.margin() - node.sumLow[reference]);
        }
        if (graph.anchor[graph.after(e)]) {
            int end = graph.anchorIndex[graph.after(e)];
            low = Math.max(low, asTheyAre ? node.low[end] : node.leastRise(graph, end, reference));
            high = Math.min(high, asTheyAre ? node.high[end] : node.mostRise(graph, end, reference));
        }
        return new int[] {low, high};
    }

    // Counted from the anchor before it an opening is known as the sum of two, and the anchor's is within the node's
    // interval: the least over the interval is charged. It is exact where the interval is one opening.
    /** Returns the least that an opening at an event's end costs; null if nothing, whatever the anchor's opening. */
    @Nullable
    StepFunction charge(int e) {
        Zones zones = problem.zones().get(e);
        if (zones.isFree()) {
            return null;
        }
        int reference = graph.referenceIndex(e);
        StepFunction least = asTheyAre ? zones.least(0, 0) : zones.least(node.low[reference], node.high[reference]);
        least.keep(lowest(e), highest(e));
        return least.most() == 0 ? null : least;
    }

    /** Returns the openings as they are, first and last, around one of this frame that cost no more than some points. */
    int[] around(int e, int opening, int points) {
        int reference = graph.referenceIndex(e);
        int middle = asTheyAre ? 0 : node.low[reference] + (node.high[reference] - node.low[reference]) / 2;
        return problem.zones().get(e).around(middle + opening, points);
    }

    /** Returns what a corridor leaves to a pass in this frame. */
    Ceiling within(Ceiling corridor) {
        return asTheyAre ? corridor.asTheyAre(node.low[0], node.high[0]) : corridor;
    }

    /** Returns the openings that the node leaves to an anchor, first and last. */
    int[] anchored(int anchor) {
        return new int[] {node.low[anchor], node.high[anchor]};
    }

    /** Returns the least that is to be added to a price times an opening counted from the start, for one of this frame. */
    double priceOfStart(double price) {
        return asTheyAre ? price * (price > 0 ? node.low[0] : node.high[0]) : 0;
    }
}
