package org.bellowscribe.solver.search;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One backward pass with openings. For each event, context and option it finds the least cost from there on as a function
 * of the opening (counted from the last anchor), leaving out whatever cannot be part of an answer within the limit.
 */
final class AirPass {

    // All stretches together, not one alone.
    private static final int ALL = -1;

    private final Setting setting;
    private final Problem problem;
    private final Graph graph;
    private final Heads heads;
    private final Node node;
    private final Frame frame;
    private final Ceiling ceiling;
    private final int only;
    /** What lies beyond the only stretch that is looked at. */
    private final @Nullable Beyond beyond;

    private final int limit;
    /** Least cost from the start of an event on; null where nothing is left. */
    final @Nullable StepFunction[][][] ahead;
    /** The same from its end on, what the opening there costs included. */
    final @Nullable StepFunction[][][] after;

    /** For each event the least that the opening at its end costs; null if nothing, whatever the anchor's opening. */
    private final @Nullable StepFunction[] charge;

    /** Openings at which the event that is looked at may begin and end, first and last. */
    private int[] begin = {};

    private int[] end = {};

    private final Lowest lowest = new Lowest();
    private final StepFunction moved = new StepFunction(64);
    private int cost = Problem.NEVER;
    private long cells;

    /** Returns a pass over the whole tune. */
    static AirPass whole(Setting setting, Frame frame, Ceiling ceiling, int limit) {
        return new AirPass(setting, frame, ceiling, ALL, null, limit);
    }

    /** Returns a pass over one stretch alone. */
    static AirPass alone(Setting setting, Node node, Ceiling ceiling, int stretch, Beyond beyond, int limit) {
        return new AirPass(setting, Frame.fromAnchors(setting, node), ceiling, stretch, beyond, limit);
    }

    private AirPass(Setting setting, Frame frame, Ceiling ceiling, int only, @Nullable Beyond beyond, int limit) {
        this.setting = setting;
        this.problem = setting.problem();
        this.graph = setting.graph();
        this.heads = setting.heads();
        this.node = frame.node();
        this.frame = frame;
        this.ceiling = ceiling;
        this.only = only;
        this.beyond = beyond;
        this.limit = limit;
        ahead = new StepFunction[graph.size][][];
        after = new StepFunction[graph.size][][];
        charge = new StepFunction[graph.size];
    }

    /** Runs the pass and returns the least cost, or {@link Problem#NEVER} if it is above the limit. */
    int run() {
        for (int i = graph.size - 1; i >= 0; i--) {
            if (only == ALL || graph.stretch[graph.visit[i]] == only) {
                event(graph.visit[i]);
            }
        }
        int root = only == ALL ? graph.visit[0] : graph.firsts.get(only);
        int least = Problem.NEVER;
        for (int x = 0; x < ahead[root].length; x++) {
            for (int c = 0; c < ahead[root][x].length; c++) {
                StepFunction function = ahead[root][x][c];
                int given = beyond == null ? 0 : beyond.potential(root, x, c);
                least = function == null ? least : Math.min(least, function.least() - given);
            }
        }
        cost = least <= limit ? least : Problem.NEVER;
        return cost;
    }

    /** Returns what the run returned. */
    int cost() {
        return cost;
    }

    /** Returns the limit: whatever the run has not found costs more. */
    int limit() {
        return limit;
    }

    /** Returns how openings are counted. */
    Frame frame() {
        return frame;
    }

    /**
     * Returns the openings as they are, first and last, at which an event is charged no more than the pass charges it.
     *
     * @param opening opening at the event's end, as the pass counts it
     */
    int[] notDearer(int e, int opening) {
        StepFunction own = charge[e];
        return frame.around(e, opening, own == null ? 0 : own.at(opening));
    }

    /** Returns how many states were expanded. */
    long cells() {
        return cells;
    }

    private void event(int e) {
        int contexts = heads.contexts(e);
        int options = problem.options().get(e).size();
        @Nullable StepFunction[] nothing = new StepFunction[options];
        ahead[e] = new StepFunction[contexts][];
        after[e] = new StepFunction[contexts][];
        Arrays.fill(ahead[e], nothing);
        Arrays.fill(after[e], nothing);
        boolean @Nullable [] allowed = node.allowed(e);
        boolean isHead = heads.of(e) == e;
        charge[e] = frame.charge(e);
        begin = frame.begin(e);
        end = frame.end(e);
        for (int x = 0; x < contexts; x++) {
            if (!ceiling.allowsAny(e, x)) {
                continue;
            }
            ahead[e][x] = new StepFunction[options];
            after[e][x] = new StepFunction[options];
            for (int c = 0; c < options; c++) {
                boolean possible = (allowed == null || allowed[c]) && !(isHead && x != c);
                if (possible && ceiling.allows(e, x, c, limit)) {
                    state(e, x, c);
                }
            }
        }
    }

    private StepFunction charged(int e, StepFunction function) {
        StepFunction own = charge[e];
        return own == null ? function : StepFunction.sum(function, own);
    }

    private void state(int e, int x, int c) {
        StepFunction ending = ending(e, x, c);
        if (ending != null) {
            ending = charged(e, ending);
        }
        if (ending == null || ending.isEmpty()) {
            return;
        }
        ending = ceiling.clipEnding(e, x, c, ending, limit).trimmed();
        if (ending.isEmpty()) {
            return;
        }
        beginning(e, x, c, ending);
        if (!lowest.isEmpty()) {
            after[e][x][c] = ending;
            ahead[e][x][c] = lowest.copy();
            cells++;
        }
    }

    // Openings at which an event may end, at the cost of what follows.
    private @Nullable StepFunction ending(int e, int x, int c) {
        int cost = jumps(e, x, c);
        if (frame.isCut(e)) {
            for (int f : graph.children.get(e)) {
                cost = Math.min(Problem.NEVER, cost + atAnchor(f, x, c));
            }
            return StepFunction.constant(end[0], end[1], cost);
        }
        StepFunction sum = null;
        List<Integer> children = graph.children.get(e);
        for (int f : children) {
            StepFunction next = following(e, f, x, c);
            sum = sum != null ? StepFunction.sum(sum, next) : children.size() > 1 ? next.trimmed() : next;
            if (sum.isEmpty()) {
                return null;
            }
        }
        if (sum == null) {
            return StepFunction.constant(end[0], end[1], cost);
        }
        sum.keep(end[0], end[1]);
        sum.raise(cost);
        return sum;
    }

    private int jumps(int e, int x, int c) {
        int sum = 0;
        for (int k : graph.jumpsFrom.get(e)) {
            sum += JumpCost.of(setting, node, k, x, c);
        }
        return sum;
    }

    // What follows an anchor begins at a fixed opening, so it is a number.
    private int atAnchor(int f, int x, int c) {
        int[] pair = problem.pairs().get(graph.treeEdge[f])[c];
        if (beyond != null && graph.stretch[f] != only) {
            return beyond.least(f, x, pair);
        }
        int least = Problem.NEVER;
        for (int j = 0; j < pair.length; j++) {
            StepFunction next = ahead[f][heads.context(f, x, j)][j];
            least = next == null ? least : Math.min(least, pair[j] + next.at(0));
        }
        return least;
    }

    /**
     * Returns, by the opening at a child's start, the cost of all but the child and what follows it, if the event before
     * takes an option.
     *
     * @param leaving cost of all but what follows the event before, by the opening at its end, which is not charged yet
     */
    StepFunction beside(int e, int child, int x, int c, StepFunction leaving) {
        boolean anchored = frame.isCut(e);
        StepFunction left = charged(e, leaving);
        int cost = jumps(e, x, c) + (anchored ? left.least() : 0);
        StepFunction sum = anchored ? StepFunction.constant(0, 0, 0) : left;
        for (int f : graph.children.get(e)) {
            if (f != child && anchored) {
                cost += atAnchor(f, x, c);
            } else if (f != child) {
                sum = StepFunction.sum(sum, following(e, f, x, c));
            }
        }
        return sum.raised(Math.min(Problem.NEVER, cost));
    }

    // What is returned holds until the next function is made.
    private StepFunction following(int e, int f, int x, int c) {
        int[] pair = problem.pairs().get(graph.treeEdge[f])[c];
        double spare = ceiling.spare(e, f, x, c, limit);
        lowest.clear();
        for (int j = 0; j < pair.length; j++) {
            int y = heads.context(f, x, j);
            StepFunction next = ahead[f][y][j];
            if (next != null && pair[j] + ceiling.ahead(f, y, j) <= spare) {
                lowest.add(next, pair[j]);
            }
        }
        return lowest.function();
    }

    // A move is cut to what can be part of an answer before it is merged: of most moves nothing is left.
    private void beginning(int e, int x, int c, StepFunction ending) {
        Option option = problem.options().get(e).get(c);
        int own = option.cost() + ending.least();
        double room = ceiling.room(e, x, c, limit);
        lowest.clear();
        for (Move move : option.moves()) {
            if (own + move.cost() > room) {
                continue;
            }
            // A push lowers the opening: it began higher than it ends.
            int least = option.sign() > 0 ? -move.high() : move.low();
            int most = option.sign() > 0 ? -move.low() : move.high();
            moved.setMoved(ending, least, most, option.cost() + move.cost());
            moved.keep(begin[0], begin[1]);
            StepFunction clipped = ceiling.clipBeginning(e, x, c, moved, limit);
            if (!clipped.isEmpty()) {
                lowest.add(clipped, 0);
            }
        }
    }
}
