package org.bellowscribe.solver.search;

import java.util.List;
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
    private static final int HALVES_FOR_A_HEAD = 2;

    final int[] low;
    final int[] high;
    /** Outlier to the anchor before. */
    final int[] riseLow;

    final int[] riseHigh;
    /** Outlier to the start. */
    final int[] sumLow;

    final int[] sumHigh;
    private final Map<Integer, boolean[]> headOptions;
    private @Nullable Ceiling corridor;

    private int partedHeads;
    private int halvings;
    /** Whether openings are better taken as they are, however wide the node is. */
    boolean asTheyAre;

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
        asTheyAre = other.asTheyAre;
        bound = other.bound;
        partedHeads = other.partedHeads;
        halvings = other.halvings;
    }

    /** Returns the node that allows everything within the bellows. */
    static Node root(Problem problem, Graph graph) {
        Node node = new Node(graph.anchors.size());
        int range = problem.highest() - problem.lowest();
        for (int a = 0; a < node.low.length; a++) {
            node.low[a] = a == 0 ? problem.startLow() : problem.lowest();
            node.high[a] = a == 0 ? problem.startHigh() : problem.highest();
        }
        Openings all = Openings.ofAll(problem, graph);
        for (int a = 1; a < node.low.length; a++) {
            int[] crossing = all.crossing(a);
            node.riseLow[a] = Math.max(-range, crossing[0]);
            node.riseHigh[a] = Math.min(range, crossing[1]);
        }
        return node;
    }

    Node copy() {
        return new Node(this);
    }

    /** Tells the node what the one that it is a half of has left. */
    void enter(Ceiling before) {
        corridor = before;
    }

    /** Returns what the node before has left; only for halves. */
    Ceiling corridor() {
        if (corridor == null) {
            throw new IllegalStateException("A root has no node before it.");
        }
        return corridor;
    }

    /** Returns true if a head should be parted, not an interval; heads alone would multiply the wide nodes. */
    boolean turnOfHeads() {
        return HALVES_FOR_A_HEAD * partedHeads <= halvings;
    }

    /** Lets a loop head take one option only. */
    void settleHead(int event, int option, int options) {
        boolean[] one = new boolean[options];
        one[option] = true;
        headOptions.put(event, one);
    }

    /** Returns this node parted by whether a loop head takes an option or another one. */
    List<Node> parted(int event, int option, int options) {
        boolean[] others = new boolean[options];
        boolean any = false;
        for (int c = 0; c < options; c++) {
            others[c] = c != option && allows(event, c);
            any |= others[c];
        }
        Node one = copy();
        one.partedHeads++;
        one.settleHead(event, option, options);
        if (!any) {
            return List.of(one);
        }
        Node rest = copy();
        rest.partedHeads++;
        rest.headOptions.put(event, others);
        return List.of(one, rest);
    }

    /** Returns a copy that will be half of this node. */
    Node halved() {
        Node half = copy();
        half.halvings++;
        return half;
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
