package org.bellowscribe.solver.search;

import java.util.Comparator;
import java.util.PriorityQueue;
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
    private static final int STARTS = 9;

    private final Problem problem;
    private final Graph graph;
    private final Heads heads;
    private final long cellLimit;
    private final int wantedStart;
    private final PriorityQueue<Node> open = new PriorityQueue<>(Comparator.<Node>comparingInt(node -> node.bound)
            .thenComparing((a, b) -> Integer.compare(b.serial, a.serial)));
    private int serial;
    private int nodes;
    private long cells;
    private int best = Problem.NEVER;
    private int @Nullable [] bestOption;
    private int @Nullable [] bestMove;

    private Search(Problem problem, long cellLimit, int wantedStart) {
        this.problem = problem;
        this.cellLimit = cellLimit;
        this.wantedStart = wantedStart;
        graph = new Graph(problem);
        heads = new Heads(problem, graph);
    }

    /**
     * Solves a problem.
     *
     * @param problem the problem
     * @param cellLimit states to expand at most before giving up the proof
     * @param wantedStart opening that the start should have if the cheapest marks leave it free
     */
    public static Answer solve(Problem problem, long cellLimit, int wantedStart) {
        return new Search(problem, cellLimit, wantedStart).run();
    }

    private Answer run() {
        Node root = Node.root(problem, graph);
        if (!root.propagate(problem, graph)) {
            return answer(Problem.NEVER);
        }
        Limits limits = new Limits(problem, graph, heads, root);
        AirPass pass = rootPass(root, limits);
        if (pass == null) {
            return answer(Problem.NEVER);
        }
        root.bound = pass.cost();
        if (isExact(pass, trace(pass))) {
            return answer(pass.cost());
        }
        int bound = deepen(root, limits, cellLimit);
        if (bestOption == null && bound < Problem.NEVER) {
            tryStarts(root);
        }
        return answer(Math.min(bound, best));
    }

    // Searches all that costs no more than the root and a gap, which grows slowly until something is found: a limit too
    // high costs much more than another round. Returns the lower bound.
    private int deepen(Node root, Limits limits, long until) {
        int proved = root.bound;
        int gap = Math.max(FIRST_GAP, root.bound / GAP_SHARE);
        while (proved < Math.min(best, Problem.NEVER)) {
            int limit = gap > LARGE ? Problem.NEVER - 1 : root.bound + gap;
            AirPass pass = pass(root, new PricedCeiling(problem, limits, false), AirPass.ALL, limit);
            if (pass != null) {
                branch(root, pass, trace(pass), limit);
            }
            if (!exhaust(limit, until)) {
                int next = open.isEmpty() ? best : open.element().bound;
                return Math.max(proved, Math.min(best, next));
            }
            proved = limit + 1;
            gap += FIRST_GAP + (gap > SMALL ? gap : gap / 2);
        }
        return best;
    }

    // Returns false if the work limit strikes first.
    private boolean exhaust(int limit, long until) {
        while (!open.isEmpty() && open.element().bound < best) {
            if (cells >= until) {
                return false;
            }
            expand(open.remove(), limit);
        }
        open.clear();
        return true;
    }

    // Nothing was found in time. From a given start there is much less to search.
    private void tryStarts(Node root) {
        for (int i = 1; i <= STARTS && bestOption == null; i++) {
            // From the middle outwards: 5, 6, 4, 7, ... tenths.
            int tenths = (STARTS + 1) / 2 + (i % 2 == 0 ? i / 2 : -(i / 2));
            Node fixed = root.copy();
            fixed.low[0] = root.low[0] + (int) ((long) (root.high[0] - root.low[0]) * tenths / (STARTS + 1));
            fixed.high[0] = fixed.low[0];
            if (fixed.propagate(problem, graph)) {
                Limits limits = new Limits(problem, graph, heads, fixed);
                AirPass pass = rootPass(fixed, limits);
                if (pass != null && !isExact(pass, trace(pass))) {
                    fixed.bound = pass.cost();
                    open.clear();
                    deepen(fixed, limits, cells + cellLimit / STARTS);
                }
            }
        }
    }

    private Answer answer(int bound) {
        int lowerBound = bound >= Problem.NEVER ? Integer.MAX_VALUE : bound;
        if (bestOption == null || bestMove == null) {
            return new Answer(null, null, null, Integer.MAX_VALUE, lowerBound, cells, nodes);
        }
        int[] rise = new int[graph.size];
        for (int e = 0; e < graph.size; e++) {
            Option chosen = problem.options().get(e).get(bestOption[e]);
            Move spent = chosen.moves().get(bestMove[e]);
            rise[e] = chosen.sign() * (spent.low() + spent.high()) / 2;
        }
        int[] openings = new Openings(problem, graph, bestOption, bestMove).near(wantedStart, rise);
        return new Answer(bestOption, bestMove, openings, best, lowerBound, cells, nodes);
    }

    private void push(Node node, Corridor corridor, int bound) {
        if (node.propagate(problem, graph)) {
            node.bound = bound;
            node.enter(corridor);
            node.serial = ++serial;
            open.add(node);
        }
    }

    private void expand(Node node, int limit) {
        int within = Math.min(limit, best - 1);
        AirPass pass = pass(node, node.corridor(), AirPass.ALL, within);
        if (pass != null) {
            node.bound = pass.cost();
            Trace trace = trace(pass);
            if (!isExact(pass, trace)) {
                branch(node, pass, trace, Math.min(limit, best - 1));
            }
        }
    }

    private Trace trace(AirPass pass) {
        return new Trace(problem, graph, heads, pass);
    }

    // Keeps the traced marks if they are the best so far; true if nothing in the node can be cheaper.
    private boolean isExact(AirPass pass, Trace trace) {
        int cost = problem.cost(trace.option, trace.move);
        boolean exists = new Openings(problem, graph, trace.option, trace.move).exist();
        if (exists && cost < best) {
            best = cost;
            bestOption = trace.option;
            bestMove = trace.move;
        }
        return exists && cost <= pass.cost();
    }

    // The root: a limit raised from the bounds, and where that does not do, from what each stretch costs by itself.
    private @Nullable AirPass rootPass(Node root, Limits limits) {
        int bound = limits.bound();
        AirPass pass = pass(root, new PricedCeiling(problem, limits, false), AirPass.ALL, bound);
        if (pass != null || !proveSegments(root, limits)) {
            return pass;
        }
        return raise(root, limits, AirPass.ALL, Math.max(bound + 1, limits.bound()));
    }

    private boolean proveSegments(Node root, Limits limits) {
        int[] costs = new int[graph.segmentRoots.size()];
        for (int s = 0; s < costs.length && costs.length > 1; s++) {
            AirPass pass = raise(root, limits, s, limits.segmentBound(s));
            if (pass == null) {
                return false;
            }
            costs[s] = pass.cost();
        }
        limits.prove(costs);
        return true;
    }

    // Raises the limit until a pass finds something: the first that does is exact, and the cheapest passes come first.
    private @Nullable AirPass raise(Node root, Limits limits, int segment, int bound) {
        int raise = 0;
        while (bound < Problem.NEVER) {
            int limit = Math.min(bound + raise, Problem.NEVER - 1);
            AirPass pass = pass(root, new PricedCeiling(problem, limits, segment != AirPass.ALL), segment, limit);
            if (pass != null || limit >= Problem.NEVER - 1) {
                return pass;
            }
            raise = raise > LARGE ? Problem.NEVER : 2 * raise + 1;
        }
        return null;
    }

    private @Nullable AirPass pass(Node node, Ceiling ceiling, int segment, int limit) {
        nodes += segment == AirPass.ALL ? 1 : 0;
        AirPass pass = new AirPass(problem, graph, heads, node, ceiling, segment, limit);
        int cost = pass.run();
        cells += pass.cells();
        return cost < Problem.NEVER ? pass : null;
    }

    private void branch(Node node, AirPass pass, Trace trace, int limit) {
        Corridor corridor = new Corridor(problem, graph, heads, pass, limit);
        for (int k : graph.jumps) {
            if (!heads.isExact(k) && isUnderestimated(node, k, trace)) {
                splitHead(node, corridor, problem.edges().get(k).to(), trace);
                return;
            }
        }
        Cut cut = Cut.of(problem, graph, node, new Openings(problem, graph, trace.option, trace.move));
        push(cut.half(node, true), corridor, node.bound);
        push(cut.half(node, false), corridor, node.bound);
    }

    private boolean isUnderestimated(Node node, int jump, Trace trace) {
        Problem.Edge edge = problem.edges().get(jump);
        int from = trace.option[edge.from()];
        int exact = problem.pairs().get(jump)[from][trace.option[edge.to()]];
        return exact > Bounds.jumpCost(problem, heads, node, jump, 0, from);
    }

    private void splitHead(Node node, Corridor corridor, int head, Trace trace) {
        int chosen = trace.option[head];
        boolean[] one = new boolean[problem.options().get(head).size()];
        boolean[] others = new boolean[one.length];
        boolean any = false;
        for (int c = 0; c < one.length; c++) {
            one[c] = c == chosen;
            others[c] = c != chosen && node.allows(head, c);
            any |= others[c];
        }
        Node first = node.copy();
        first.restrict(head, one);
        push(first, corridor, node.bound);
        if (any) {
            Node second = node.copy();
            second.restrict(head, others);
            push(second, corridor, node.bound);
        }
    }
}
