package org.bellowscribe.solver.search;

import org.jspecify.annotations.Nullable;

/**
 * Where to cut a node in two. The best cut shuts the traced marks, which the relaxation liked and the bellows do not, out
 * of both halves.
 *
 * @param anchor index of the anchor whose interval is cut
 * @param ofRise true to cut its difference to the anchor before it, false to cut its opening
 * @param value last value of the lower half
 */
record Cut(int anchor, boolean ofRise, int value) {

    /** Returns the cut for marks that have no openings, or halves the widest interval where nothing better is known. */
    static Cut of(Problem problem, Graph graph, Node node, Openings openings) {
        boolean fits = openings.existInEndlessBellows();
        Cut best = fits ? between(node, openings) : closing(problem, graph, node, openings);
        return best != null ? best : widest(node, !fits || node.low[0] == node.high[0]);
    }

    // The marks need a start of at least one and at most another opening, and these cross.
    private static @Nullable Cut between(Node node, Openings openings) {
        int least = openings.leastStart();
        int most = openings.mostStart();
        int value = most + (least - most) / 2;
        return least > most && value >= node.low[0] && value < node.high[0] ? new Cut(0, false, value) : null;
    }

    // On the way from the start through the anchors to the end the marks rise by too much, or fall by too much, to play
    // again. What one anchor rises less, the others must rise more.
    private static @Nullable Cut closing(Problem problem, Graph graph, Node node, Openings openings) {
        if (!problem.again()) {
            return null;
        }
        int last = graph.last;
        long low = openings.pathLow(last);
        long high = openings.pathHigh(last);
        int end = graph.anchorIndex[graph.after(last)];
        int first = end >= 0 ? end : graph.referenceIndex(last);
        if (end >= 0) {
            low = 0;
            high = 0;
        }
        for (int a = first; a > 0; a = graph.anchorParent.get(a)) {
            low += openings.crossingLow(a);
            high += openings.crossingHigh(a);
        }
        if (low <= problem.margin() && high >= -problem.margin()) {
            return null;
        }
        Cut best = null;
        int width = 0;
        for (int a = first; a > 0; a = graph.anchorParent.get(a)) {
            long excess = low > problem.margin() ? low - problem.margin() : high + problem.margin();
            long own = low > problem.margin() ? openings.crossingLow(a) : openings.crossingHigh(a);
            int value = (int) (own - excess / 2 - (excess > 0 ? 1 : 0));
            boolean inside = value >= node.riseLow[a] && value < node.riseHigh[a];
            if (inside && node.riseHigh[a] - node.riseLow[a] > width) {
                width = node.riseHigh[a] - node.riseLow[a];
                best = new Cut(a, true, value);
            }
        }
        return best;
    }

    private static Cut widest(Node node, boolean differences) {
        int anchor = -1;
        int width = 0;
        for (int a = 1; differences && a < node.low.length; a++) {
            if (node.riseHigh[a] - node.riseLow[a] > width) {
                width = node.riseHigh[a] - node.riseLow[a];
                anchor = a;
            }
        }
        if (anchor >= 0) {
            return new Cut(anchor, true, node.riseLow[anchor] + width / 2);
        }
        for (int a = 0; a < node.low.length; a++) {
            if (node.high[a] - node.low[a] > width) {
                width = node.high[a] - node.low[a];
                anchor = a;
            }
        }
        if (anchor < 0) {
            throw new IllegalStateException("A node without freedom must be exact.");
        }
        return new Cut(anchor, false, node.low[anchor] + width / 2);
    }

    /** Returns one half of a node. */
    Node half(Node node, boolean lower) {
        Node half = node.halved();
        if (lower) {
            (ofRise ? half.riseHigh : half.high)[anchor] = value;
        } else {
            (ofRise ? half.riseLow : half.low)[anchor] = value + 1;
        }
        return half;
    }
}
