package org.bellowscribe.solver.search;

import java.util.Comparator;
import java.util.PriorityQueue;

/**
 * The branching under the root, within a limit that rises slowly until something is found: a limit too high costs much
 * more than another round. Best bound first, ties by the latest node.
 */
final class Deepening {

    // In points. A gap beyond this is raised to the end.
    private static final int LARGE = 20_000;
    private static final int SMALL = 200;
    private static final int FIRST_GAP = 4;
    private static final int GAP_SHARE = 64;
    private static final int LARGEST_STEP = 16;
    // A round that takes a larger part of the work than this is followed by a small step.
    private static final int LONG_ROUND = 8;
    // Rounds before answers are looked for from given starts.
    private static final int EASY_ROUNDS = 2;
    private static final int STARTS = 5;

    private final Setting setting;
    private final Work work;
    private final Node root;
    private final RootBounds bounds;
    private final Branches branches;
    private final PriorityQueue<Node> open = new PriorityQueue<>(Comparator.<Node>comparingInt(node -> node.bound)
            .thenComparing((a, b) -> Integer.compare(b.serial, a.serial)));
    private final int unit;
    private int serial;

    Deepening(Setting setting, Work work, Node root, RootBounds bounds) {
        this.setting = setting;
        this.work = work;
        this.root = root;
        this.bounds = bounds;
        unit = setting.problem().unit();
        branches = new Branches(setting);
    }

    /** Searches round after round and returns the lower bound. */
    int run() {
        int proved = root.bound;
        int step = Math.max(FIRST_GAP * unit, Math.min(LARGEST_STEP * unit, root.bound / GAP_SHARE));
        int gap = step;
        for (int round = 1; proved < Math.min(work.best(), Problem.NEVER); round++) {
            // With one anchor a given start is a single exact pass, and a good answer makes the slow rise needless.
            if (round == EASY_ROUNDS + 1 && setting.graph().anchors.size() == 1 && !work.isFound()) {
                new Starts(setting, work, root, bounds).attempt(STARTS);
                gap = work.isFound() ? Math.max(gap, work.best() - root.bound) : gap;
            }
            long before = work.cells();
            int limit = Math.min(work.best(), gap > LARGE * unit ? Problem.NEVER : root.bound + gap + 1) - 1;
            Frame frame = Frame.of(setting, root);
            AirPass pass = work.pass(frame, bounds.ceiling(frame), limit);
            if (pass != null) {
                branch(root, pass, work.trace(pass), limit);
            }
            if (!exhaust(limit)) {
                int next = open.isEmpty() ? work.best() : open.element().bound;
                return Math.max(proved, Math.min(work.best(), next));
            }
            proved = limit + 1;
            gap = next(gap, step, work.cells() - before);
        }
        return work.best();
    }

    private int next(int gap, int step, long done) {
        if (work.isLargePart(done, LONG_ROUND)) {
            return gap + step;
        }
        return gap + FIRST_GAP * unit + (gap > SMALL * unit ? gap : gap / 2);
    }

    // Returns false if the work limit strikes first.
    private boolean exhaust(int limit) {
        while (!open.isEmpty() && open.element().bound < work.best()) {
            if (work.isSpent()) {
                return false;
            }
            expand(open.remove(), limit);
        }
        open.clear();
        return true;
    }

    private void expand(Node node, int limit) {
        Frame frame = Frame.of(setting, node);
        AirPass pass = work.pass(frame, frame.within(node.corridor()), Math.min(limit, work.best() - 1));
        if (pass != null) {
            node.bound = Math.max(node.bound, pass.cost());
            Trace trace = work.trace(pass);
            if (!work.isExact(pass, trace)) {
                branch(node, pass, trace, Math.min(limit, work.best() - 1));
            }
        }
    }

    private void branch(Node node, AirPass pass, Trace trace, int limit) {
        Corridor corridor = new Corridor(setting, pass, limit);
        for (Node part : branches.of(node, trace)) {
            if (part.propagate(setting.problem(), setting.graph())) {
                part.bound = node.bound;
                part.enter(corridor);
                part.serial = ++serial;
                open.add(part);
            }
        }
    }
}
