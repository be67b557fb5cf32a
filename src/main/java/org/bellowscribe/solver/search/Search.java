package org.bellowscribe.solver.search;

import org.jspecify.annotations.Nullable;

/**
 * Branch and bound over the openings of the anchors and the options of loop heads: the root first, then what is still
 * relaxed there.
 */
public final class Search {

    // Starts from which an answer is looked for where the search gave none.
    private static final int STARTS = 9;

    private final Setting setting;
    private final Work work;

    private Search(Problem problem, long cellLimit, int below) {
        setting = Setting.of(problem);
        work = new Work(setting, cellLimit, below);
    }

    /**
     * Solves a problem.
     *
     * @param problem the problem
     * @param cellLimit states to expand at most before giving up the proof
     */
    public static Answer solve(Problem problem, long cellLimit) {
        return solve(problem, cellLimit, Problem.NEVER);
    }

    /**
     * Solves a problem if that costs little enough.
     *
     * @param problem the problem
     * @param cellLimit states to expand at most before giving up the proof
     * @param below answers that cost as much or more are not looked for: without an answer this is its lower bound
     */
    public static Answer solve(Problem problem, long cellLimit, int below) {
        Search search = new Search(Turned.of(problem), cellLimit, Math.min(below, Problem.NEVER));
        int bound = search.run();
        Work work = search.work;
        int lowerBound = bound >= Problem.NEVER ? Integer.MAX_VALUE : bound;
        Trace found = work.found();
        int[] openings = work.openings();
        if (found == null || openings == null) {
            return new Answer(null, null, null, Integer.MAX_VALUE, lowerBound, work.cells(), work.nodes());
        }
        int[] option = Turned.back(found.option, problem);
        int[] move = Turned.back(found.move, problem);
        return new Answer(
                option,
                move,
                Turned.backOpenings(openings, problem),
                work.best(),
                lowerBound,
                work.cells(),
                work.nodes());
    }

    // Returns the lower bound.
    private int run() {
        Node root = Node.root(setting.problem(), setting.graph());
        if (!root.propagate(setting.problem(), setting.graph())) {
            return Problem.NEVER;
        }
        RootBounds bounds = new RootBounds(setting, root);
        RootPass rootPass = new RootPass(setting, work, root, bounds);
        AirPass pass = rootPass.run();
        if (pass == null && work.isSpent()) {
            new Starts(setting, work, root, bounds).attempt(STARTS);
            return Math.min(bounds.bound(), work.best());
        }
        if (pass == null) {
            return work.best();
        }
        root.bound = pass.cost();
        if (work.isExact(pass, work.trace(pass))) {
            return pass.cost();
        }
        boolean whole =
                setting.graph().anchors.size() == 1 && setting.graph().firsts.size() == 1;
        if (whole && isSettled(root, rootPass.asTheyAre(root.bound))) {
            return Math.min(root.bound, work.best());
        }
        int bound = work.isSpent() ? root.bound : new Deepening(setting, work, root, bounds).run();
        if (!work.isFound() && bound < work.best()) {
            new Starts(setting, work, root, bounds).attempt(STARTS);
        }
        return Math.min(bound, work.best());
    }

    // Learns from the pass that takes the openings as they are; true if nothing more is to be known.
    private boolean isSettled(Node root, @Nullable AirPass pass) {
        if (pass == null) {
            root.bound = work.isSpent() ? root.bound : work.best();
            return !work.isSpent();
        }
        root.asTheyAre = pass.cost() >= root.bound;
        root.bound = Math.max(root.bound, pass.cost());
        return work.isExact(pass, work.trace(pass));
    }
}
