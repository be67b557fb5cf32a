package org.bellowscribe.solver.search;

/** What a jump costs, as far as a node tells which option its head takes. */
final class JumpCost {

    private JumpCost() {}

    /** Returns the pair cost of a jump: exact where the head is remembered, else the least possible. */
    static int of(Setting setting, Node node, int jump, int x, int c) {
        return setting.heads().isExact(jump)
                ? setting.problem().pairs().get(jump)[c][x]
                : least(setting.problem(), node, jump, c);
    }

    /** Returns the least pair cost of a jump over the options that its head may take in a node. */
    static int least(Problem problem, Node node, int jump, int c) {
        int head = problem.edges().get(jump).to();
        int[] pair = problem.pairs().get(jump)[c];
        int least = Problem.NEVER;
        for (int j = 0; j < pair.length; j++) {
            if (node.allows(head, j)) {
                least = Math.min(least, pair[j]);
            }
        }
        return least;
    }
}
