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
        push(Node.root(problem, graph), 0);
        boolean exhausted = false;
        while (!open.isEmpty() && open.peek().bound < best && !exhausted) {
            exhausted = cells >= cellLimit && nodes > 0;
            if (!exhausted) {
                expand(open.remove());
            }
        }
        int bound = open.isEmpty() ? best : Math.min(best, open.peek().bound);
        return answer(bound);
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

    private void push(Node node, int bound) {
        if (node.propagate(problem, graph)) {
            node.bound = bound;
            node.serial = ++serial;
            open.add(node);
        }
    }

    private void expand(Node node) {
        nodes++;
        Limits limits = new Limits(problem, graph, heads, node);
        limits.prove(node.proved);
        if (limits.bound() >= best) {
            return;
        }
        // What was proved of the stretches for the whole node holds for its halves: often it is enough.
        AirPass pass = pass(node, limits, AirPass.ALL, Math.min(best - 1, Math.max(limits.bound(), node.bound)));
        if (pass == null && proveSegments(node, limits)) {
            pass = deepen(node, limits, AirPass.ALL, Math.max(limits.bound(), node.bound));
        }
        if (pass == null) {
            return;
        }
        Trace trace = new Trace(problem, graph, heads, pass);
        node.bound = pass.cost();
        Openings openings = new Openings(problem, graph, trace.option, trace.move);
        int cost = problem.cost(trace.option, trace.move);
        boolean exists = openings.exist();
        if (exists && cost < best) {
            best = cost;
            bestOption = trace.option;
            bestMove = trace.move;
        }
        if (!exists || cost > node.bound) {
            branch(node, trace, openings);
        }
    }

    private boolean proveSegments(Node node, Limits limits) {
        int[] costs = new int[graph.segmentRoots.size()];
        for (int s = 0; s < costs.length && costs.length > 1; s++) {
            AirPass pass = deepen(node, limits, s, Math.max(node.proved[s], limits.segmentBound(s)));
            if (pass == null) {
                return false;
            }
            costs[s] = pass.cost();
        }
        node.proved = costs;
        limits.prove(costs);
        return limits.bound() < best;
    }

    // Raises the limit until a pass finds something: the first that does is exact, and the cheapest passes come first.
    private @Nullable AirPass deepen(Node node, Limits limits, int segment, int bound) {
        int raise = 0;
        while (bound < Problem.NEVER) {
            int limit = Math.min(bound + raise, segment == AirPass.ALL ? best - 1 : Problem.NEVER - 1);
            AirPass pass = pass(node, limits, segment, limit);
            if (pass != null) {
                return pass;
            }
            if (limit < bound + raise || limit >= Problem.NEVER - 1) {
                return null;
            }
            raise = raise > LARGE ? Problem.NEVER : 2 * raise + 1;
        }
        return null;
    }

    private @Nullable AirPass pass(Node node, Limits limits, int segment, int limit) {
        AirPass pass = new AirPass(problem, graph, heads, node, limits, segment, limit);
        int cost = pass.run();
        cells += pass.cells();
        return cost < Problem.NEVER ? pass : null;
    }

    private void branch(Node node, Trace trace, Openings openings) {
        for (int k : graph.jumps) {
            if (!heads.isExact(k) && isUnderestimated(node, k, trace)) {
                splitHead(node, problem.edges().get(k).to(), trace);
                return;
            }
        }
        Cut cut = Cut.of(problem, graph, node, openings);
        push(cut.half(node, true), node.bound);
        push(cut.half(node, false), node.bound);
    }

    private boolean isUnderestimated(Node node, int jump, Trace trace) {
        Problem.Edge edge = problem.edges().get(jump);
        int from = trace.option[edge.from()];
        int exact = problem.pairs().get(jump)[from][trace.option[edge.to()]];
        return exact > Bounds.jumpCost(problem, heads, node, jump, 0, from);
    }

    private void splitHead(Node node, int head, Trace trace) {
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
        push(first, node.bound);
        if (any) {
            Node second = node.copy();
            second.restrict(head, others);
            push(second, node.bound);
        }
    }
}
