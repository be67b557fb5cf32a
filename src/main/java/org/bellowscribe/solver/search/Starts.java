package org.bellowscribe.solver.search;

import org.jspecify.annotations.Nullable;

/** Answers looked for from given openings of the start: from a given start there is much less to search. */
final class Starts {

    // In points.
    private static final int FIRST_ROOM = 16;
    private static final int LARGER = 4;
    private static final int LARGEST_ROOM = 256;

    private final Setting setting;
    private final Work work;
    private final Node root;
    private final RootBounds bounds;
    private final Branches branches;

    Starts(Setting setting, Work work, Node root, RootBounds bounds) {
        this.setting = setting;
        this.work = work;
        this.root = root;
        this.bounds = bounds;
        branches = new Branches(setting);
    }

    /** Tries so many starts, from the middle outwards. When the work is used up, any answer will do. */
    void attempt(int starts) {
        for (int i = 1; i <= starts && goesOn(); i++) {
            // 5, 6, 4, 7, ... tenths.
            int part = (starts + 1) / 2 + (i % 2 == 0 ? i / 2 : -(i / 2));
            Node fixed = root.copy();
            fixed.low[0] = root.low[0] + (int) ((long) (root.high[0] - root.low[0]) * part / (starts + 1));
            fixed.high[0] = fixed.low[0];
            dive(fixed);
        }
    }

    private boolean goesOn() {
        return !work.isSpent() || (!work.isFound() && !work.isSpentTwice());
    }

    // A limit too high costs much more than another round. Where a start is fixed in many steps no answer is near.
    private @Nullable AirPass within(Node node) {
        int unit = setting.problem().unit();
        long room = setting.graph().anchors.size() == 1 ? (long) FIRST_ROOM * unit : Problem.NEVER;
        while (true) {
            int limit = (int) Math.min(
                    work.best() - 1L,
                    room > (long) LARGEST_ROOM * unit || work.isSpent() ? Problem.NEVER : root.bound + room);
            AirPass pass = work.pass(node, bounds.ceiling(), limit);
            if (pass != null || limit == work.best() - 1) {
                return pass;
            }
            room *= LARGER;
        }
    }

    // Fixes one thing after the other as the marks have it that are least without.
    private void dive(Node node) {
        boolean goesOn = true;
        while (goesOn && node.propagate(setting.problem(), setting.graph())) {
            AirPass pass = within(node);
            goesOn = false;
            if (pass != null) {
                Trace trace = work.trace(pass);
                goesOn = !work.isExact(pass, trace) && branches.settle(node, trace);
            }
        }
    }
}
