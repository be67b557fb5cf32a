package org.bellowscribe.solver.search;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * A node of the branching: for each anchor the openings it may have, for each anchor but the start how far it may lie
 * above its predecessor, and for some loop heads the options they may take.
 */
final class Node {

    // Propagation settles within a few rounds; more only tighten by odd units.
    private static final int ROUNDS = 6;

    final int[] low;
    final int[] high;
    /** Difference to the anchor before. */
    final int[] riseLow;

    final int[] riseHigh;
    /** Difference to the start. */
    final int[] sumLow;

    final int[] sumHigh;
    private final Map<Integer, boolean[]> headOptions;
    private @Nullable Corridor corridor;

    int bound;
    int serial;

    private Node(int anchors) {
        low = new int[anchors];
        high = new int[anchors];
        riseLow = new int[anchors];
        riseHigh = new int[anchors];
        sumLow = new int[anchors];
        sumHigh = new int[anchors];
        headOptions = new TreeMap<>();
    }

    private Node(Node other) {
        low = other.low.clone();
        high = other.high.clone();
        riseLow = other.riseLow.clone();
        riseHigh = other.riseHigh.clone();
        sumLow = other.sumLow.clone();
        sumHigh = other.sumHigh.clone();
        headOptions = new TreeMap<>(other.headOptions);
        bound = other.bound;
    }

    /** Returns the node that allows everything within the bellows. */
    static Node root(Problem problem, Graph graph) {
        Node node = new Node(graph.anchors.size());
        int range = problem.highest() - problem.lowest();
        for (int a = 0; a < node.low.length; a++) {
            node.low[a] = a == 0 ? problem.startLow() : problem.lowest();
            node.high[a] = a == 0 ? problem.startHigh() : problem.highest();
            node.riseLow[a] = a == 0 ? 0 : -range;
            node.riseHigh[a] = a == 0 ? 0 : range;
        }
        return node;
    }

    Node copy() {
        return new Node(this);
    }

    /** Tells the node what the one that it is a half of has left. */
    void enter(Corridor before) {
        corridor = before;
    }

    /** Returns what the node before has left; only for halves. */
    Corridor corridor() {
        if (corridor == null) {
            throw new IllegalStateException("A root has no node before it.");
        }
        return corridor;
    }

    /** Allows a loop head only some of its options. */
    void restrict(int event, boolean[] options) {
        headOptions.put(event, options);
    }

    /** Returns the options an event may take, or null if all. */
    boolean @Nullable [] allowed(int event) {
        return headOptions.get(event);
    }

    boolean allows(int event, int option) {
        boolean[] options = headOptions.get(event);
        return options == null || options[option];
    }

    /** Tightens all intervals by each other; returns false if one is empty. */
    boolean propagate(Problem problem, Graph graph) {
        for (int round = 0; round < ROUNDS; round++) {
            for (int a = 1; a < low.length; a++) {
                int p = graph.anchorParent.get(a);
                riseLow[a] = Math.max(riseLow[a], low[a] - high[p]);
                riseHigh[a] = Math.min(riseHigh[a], high[a] - low[p]);
                low[a] = Math.max(low[a], low[p] + riseLow[a]);
                high[a] = Math.min(high[a], high[p] + riseHigh[a]);
                low[p] = Math.max(low[p], low[a] - riseHigh[a]);
                high[p] = Math.min(high[p], high[a] - riseLow[a]);
                if (riseLow[a] > riseHigh[a] || low[a] > high[a] || low[p] > high[p]) {
                    return false;
                }
                sumLow[a] = sumLow[p] + riseLow[a];
                sumHigh[a] = sumHigh[p] + riseHigh[a];
            }
            if (!closeAgain(problem, graph)) {
                return false;
            }
        }
        return low[0] <= high[0];
    }

    // Where the tune ends at an anchor, playing again ties that anchor to the start.
    private boolean closeAgain(Problem problem, Graph graph) {
        int end = graph.anchorIndex[graph.after(graph.last)];
        if (!problem.again() || end < 0) {
            return true;
        }
        int least = Math.max(sumLow[end], -problem.margin());
        int most = Math.min(sumHigh[end], problem.margin());
        if (least > most) {
            return false;
        }
        int allLow = sumLow[end];
        int allHigh = sumHigh[end];
        for (int a = end; a > 0; a = graph.anchorParent.get(a)) {
            riseLow[a] = Math.max(riseLow[a], least - (allHigh - riseHigh[a]));
            riseHigh[a] = Math.min(riseHigh[a], most - (allLow - riseLow[a]));
            if (riseLow[a] > riseHigh[a]) {
                return false;
            }
        }
        sumLow[end] = least;
        sumHigh[end] = most;
        return true;
    }

    /** Returns the least an anchor can lie above another one. */
    int leastRise(Graph graph, int anchor, int reference) {
        if (anchor == reference) {
            return 0;
        }
        return anchor > 0 && graph.anchorParent.get(anchor) == reference
                ? riseLow[anchor]
                : Math.max(low[anchor] - high[reference], sumLow[anchor] - sumHigh[reference]);
    }

    /** Returns the most an anchor can lie above another one. */
    int mostRise(Graph graph, int anchor, int reference) {
        if (anchor == reference) {
            return 0;
        }
        return anchor > 0 && graph.anchorParent.get(anchor) == reference
                ? riseHigh[anchor]
                : Math.min(high[anchor] - low[reference], sumHigh[anchor] - sumLow[reference]);
    }
}
