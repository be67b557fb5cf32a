package org.bellowscribe.solver.search;

import java.util.List;

/** Where a node is parted when the marks that are least in it cannot be played as they are. */
final class Branches {

    private final Setting setting;
    private final Problem problem;
    private final Graph graph;
    private final Heads heads;

    Branches(Setting setting) {
        this.setting = setting;
        this.problem = setting.problem();
        this.graph = setting.graph();
        this.heads = setting.heads();
    }

    /** Returns the parts of a node; together they hold all its answers. */
    List<Node> of(Node node, Trace trace) {
        Openings openings = new Openings(problem, graph, trace.option, trace.move);
        if (node.turnOfHeads() || openings.exist()) {
            for (int k : graph.jumps) {
                if (isUnderestimated(node, k, trace)) {
                    int head = problem.edges().get(k).to();
                    return node.parted(
                            head,
                            trace.option[head],
                            problem.options().get(head).size());
                }
            }
        }
        Cut cut = Cut.of(problem, graph, node, openings);
        return List.of(cut.half(node, true), cut.half(node, false));
    }

    // A jump whose head is not remembered is charged the least that any head would cost.
    private boolean isUnderestimated(Node node, int jump, Trace trace) {
        if (heads.isExact(jump)) {
            return false;
        }
        Problem.Edge edge = problem.edges().get(jump);
        int from = trace.option[edge.from()];
        int exact = problem.pairs().get(jump)[from][trace.option[edge.to()]];
        return exact > JumpCost.of(setting, node, jump, 0, from);
    }

    /** Fixes loop heads or the next anchor as the marks have them; returns false if all that is fixed already. */
    boolean settle(Node node, Trace trace) {
        boolean any = false;
        for (int k : graph.jumps) {
            if (isUnderestimated(node, k, trace)) {
                int head = problem.edges().get(k).to();
                node.settleHead(
                        head, trace.option[head], problem.options().get(head).size());
                any = true;
            }
        }
        for (int a = 1; a < node.low.length; a++) {
            if (node.riseLow[a] < node.riseHigh[a]) {
                node.riseLow[a] = Math.max(node.riseLow[a], Math.min(node.riseHigh[a], trace.rise(a)));
                node.riseHigh[a] = node.riseLow[a];
                return true;
            }
        }
        return any;
    }
}
