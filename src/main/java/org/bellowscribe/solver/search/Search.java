package org.bellowscribe.solver.search;

import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/**
 * Branch and bound over the openings of the anchors and the options of loop heads. Each node is solved exactly but for
 * what is still relaxed: that all stretches agree on the anchors' openings within the bellows. Best bound first, ties by
 * the latest node.
 */
public final class Search {

    // A limit raised beyond this is raised to the end.
    private static final int LARGE = 20_000;
    private static final int SMALL = 200;
    private static final int FIRST_GAP = 4;
    private static final int GAP_SHARE = 64;
    private static final int LARGEST_STEP = 16;
    // A round that takes a larger part of the work than this is followed by a small step.
    private static final int LONG_ROUND = 8;
    // Rounds before answers are looked for from given starts.
    private static final int EASY_ROUNDS = 2;
    // How much dearer than the least the ways into a stretch are known: what is missed adds up over the stretches.
    private static final int LEAST_ROOM = 4;
    private static final int MOST_ROOM = 24;
    private static final int STARTS = 5;
    private static final int MORE_STARTS = 9;

    private final Problem problem;
    private final Graph graph;
    private final Setting setting;
    private final Branches branches;
    private final long cellLimit;
    private final PriorityQueue<Node> open = new PriorityQueue<>(Comparator.<Node>comparingInt(node -> node.bound)
            .thenComparing((a, b) -> Integer.compare(b.serial, a.serial)));
    private int serial;
    private int nodes;
    private long cells;
    private int best = Problem.NEVER;
    private @Nullable Trace found;

    private Search(Problem problem, long cellLimit) {
        this.problem = problem;
        this.cellLimit = cellLimit;
        setting = Setting.of(problem);
        graph = setting.graph();
        branches = new Branches(setting);
    }

    /**
     * Solves a problem.
     *
     * @param problem the problem
     * @param cellLimit states to expand at most before giving up the proof
     * @param wantedStart opening that the start should have if the cheapest marks leave it free
     */
    public static Answer solve(Problem problem, long cellLimit, int wantedStart) {
        Search search = new Search(Turned.of(problem), cellLimit);
        int bound = search.run();
        int lowerBound = bound >= Problem.NEVER ? Integer.MAX_VALUE : bound;
        Trace found = search.found;
        if (found == null) {
            return new Answer(null, null, null, Integer.MAX_VALUE, lowerBound, search.cells, search.nodes);
        }
        int[] option = Turned.back(found.option, problem);
        int[] move = Turned.back(found.move, problem);
        int[] openings = new Openings(problem, new Graph(problem), option, move).near(wantedStart);
        return new Answer(option, move, openings, search.best, lowerBound, search.cells, search.nodes);
    }

    // Returns the lower bound.
    private int run() {
        Node root = Node.root(problem, graph);
        if (!root.propagate(problem, graph)) {
            return Problem.NEVER;
        }
        Limits limits = new Limits(setting, root);
        AirPass pass = rootPass(root, limits);
        if (pass == null && isSpent()) {
            tryStarts(root, limits, MORE_STARTS);
            return Math.min(limits.bound(), best);
        }
        if (pass == null) {
            return Problem.NEVER;
        }
        root.bound = pass.cost();
        if (isExact(pass, trace(pass))) {
            return pass.cost();
        }
        int bound = deepen(root, limits);
        if (found == null && bound < Problem.NEVER) {
            tryStarts(root, limits, MORE_STARTS);
        }
        return Math.min(bound, best);
    }

    // Searches all that costs no more than the root and a gap, which grows slowly until something is found: a limit too
    // high costs much more than another round. Returns the lower bound.
    private int deepen(Node root, Limits limits) {
        int proved = root.bound;
        int step = Math.max(FIRST_GAP, Math.min(LARGEST_STEP, root.bound / GAP_SHARE));
        int gap = step;
        for (int round = 1; proved < Math.min(best, Problem.NEVER); round++) {
            // With one anchor a given start is a single exact pass, and a good answer makes the slow rise needless.
            if (round == EASY_ROUNDS + 1 && graph.anchors.size() == 1 && found == null) {
                tryStarts(root, limits, STARTS);
                gap = found == null ? gap : Math.max(gap, best - root.bound);
            }
            long before = cells;
            int limit = gap > LARGE ? Problem.NEVER - 1 : Math.min(best - 1, root.bound + gap);
            AirPass pass = pass(root, limits.ceiling(), limit);
            if (pass != null) {
                branch(root, pass, trace(pass), limit);
            }
            if (!exhaust(limit)) {
                int next = open.isEmpty() ? best : open.element().bound;
                return Math.max(proved, Math.min(best, next));
            }
            proved = limit + 1;
            gap = next(gap, step, cells - before);
        }
        return best;
    }

    private int next(int gap, int step, long work) {
        if (work > cellLimit / LONG_ROUND) {
            return gap + step;
        }
        return gap + FIRST_GAP + (gap > SMALL ? gap : gap / 2);
    }

    // Returns false if the work limit strikes first.
    private boolean exhaust(int limit) {
        while (!open.isEmpty() && open.element().bound < best) {
            if (isSpent()) {
                return false;
            }
            expand(open.remove(), limit);
        }
        open.clear();
        return true;
    }

    private boolean isSpent() {
        return cells >= cellLimit;
    }

    // From a given start there is much less to search. When the work is used up, any answer will do.
    private void tryStarts(Node root, Limits limits, int starts) {
        for (int i = 1; i <= starts && (!isSpent() || (found == null && cells / 2 < cellLimit)); i++) {
            // From the middle outwards: 5, 6, 4, 7, ... tenths.
            int part = (starts + 1) / 2 + (i % 2 == 0 ? i / 2 : -(i / 2));
            Node fixed = root.copy();
            fixed.low[0] = root.low[0] + (int) ((long) (root.high[0] - root.low[0]) * part / (starts + 1));
            fixed.high[0] = fixed.low[0];
            dive(fixed, limits);
        }
    }

    // Fixes one thing after the other as the marks have it that are least without.
    private void dive(Node node, Limits limits) {
        boolean goesOn = true;
        while (goesOn && node.propagate(problem, graph)) {
            AirPass pass = pass(node, limits.ceiling(), best - 1);
            goesOn = false;
            if (pass != null) {
                Trace trace = trace(pass);
                goesOn = !isExact(pass, trace) && branches.settle(node, trace);
            }
        }
    }

    private void expand(Node node, int limit) {
        AirPass pass = pass(node, node.corridor(), Math.min(limit, best - 1));
        if (pass != null) {
            node.bound = pass.cost();
            Trace trace = trace(pass);
            if (!isExact(pass, trace)) {
                branch(node, pass, trace, Math.min(limit, best - 1));
            }
        }
    }

    private void branch(Node node, AirPass pass, Trace trace, int limit) {
        Corridor corridor = new Corridor(setting, pass, limit);
        for (Node part : branches.of(node, trace)) {
            if (part.propagate(problem, graph)) {
                part.bound = node.bound;
                part.enter(corridor);
                part.serial = ++serial;
                open.add(part);
            }
        }
    }

    private Trace trace(AirPass pass) {
        return new Trace(setting, pass);
    }

    // Keeps the traced marks if they are the best so far; true if nothing in the node can be cheaper.
    private boolean isExact(AirPass pass, Trace trace) {
        int cost = problem.cost(trace.option, trace.move);
        boolean exists = new Openings(problem, graph, trace.option, trace.move).exist();
        if (exists && cost < best) {
            best = cost;
            found = trace;
        }
        return exists && cost <= pass.cost();
    }

    // The root: a limit raised from the bounds, and where that does not do, from what each stretch costs by itself.
    private @Nullable AirPass rootPass(Node root, Limits limits) {
        int bound = limits.bound();
        Ceiling ceiling = limits.ceiling();
        AirPass pass = pass(root, ceiling, bound);
        if (pass != null || (graph.segmentRoots.size() > 1 && !proveStretches(root, limits))) {
            return pass;
        }
        return raise(Math.max(bound + 1, limits.bound()), limit -> pass(root, ceiling, limit));
    }

    private boolean proveStretches(Node root, Limits limits) {
        Stretches stretches = limits.stretches();
        int room = Math.min(MOST_ROOM, LEAST_ROOM + graph.segmentRoots.size());
        Ceiling ceiling = new PricedCeiling(problem, limits.prices, stretches);
        for (int s = graph.segmentRoots.size() - 1; s >= 0; s--) {
            int stretch = s;
            IntFunction<@Nullable AirPass> passWithin =
                    limit -> ran(AirPass.alone(setting, root, ceiling, stretch, stretches.beyond(), limit));
            AirPass pass = raise(stretches.look(stretch) + room, passWithin);
            if (pass == null) {
                return false;
            }
            stretches.settle(stretch, pass);
        }
        limits.prove(stretches);
        return true;
    }

    // Raises the limit until a pass finds something: the first that does is exact, and the cheapest passes come first.
    private @Nullable AirPass raise(int bound, IntFunction<@Nullable AirPass> passWithin) {
        int raise = 0;
        while (bound < Problem.NEVER) {
            int limit = Math.min(bound + raise, Problem.NEVER - 1);
            AirPass pass = passWithin.apply(limit);
            if (pass != null || limit >= Problem.NEVER - 1 || isSpent()) {
                return pass;
            }
            raise = raise > LARGE ? Problem.NEVER : 2 * raise + 1;
        }
        return null;
    }

    private @Nullable AirPass pass(Node node, Ceiling ceiling, int limit) {
        nodes++;
        return ran(AirPass.whole(setting, node, ceiling, limit));
    }

    private @Nullable AirPass ran(AirPass pass) {
        int cost = pass.run();
        cells += pass.cells();
        return cost < Problem.NEVER ? pass : null;
    }
}
