package org.bellowscribe.solver.search;

import org.jspecify.annotations.Nullable;

/**
 * A forward pass along what a finished backward pass has left. For each event, context and option it finds the least cost
 * of all the rest as a function of the opening. Together the two leave a corridor of openings within the limit; a pass
 * with tighter intervals need not look beside it.
 */
final class Corridor implements Ceiling {

    private final Problem problem;
    private final Graph graph;
    private final Heads heads;
    private final AirPass pass;
    private final int limit;
    /** Cost of everything else by the opening at an event's start; null where nothing is left. */
    private final @Nullable StepFunction[][][] begin;
    /** Cost of all but what follows by the opening at an event's end, which is not charged yet. */
    private final @Nullable StepFunction[][][] end;

    /** Whether an event has anything left in a context. */
    private final boolean[][] any;
    /** Openings, first and last, of the anchor from which they are counted; null if a pass counts them in the same way. */
    private final int @Nullable [] widest;
    /** What was widened last. */
    private @Nullable StepFunction source;

    private final Lowest lowest = new Lowest();
    private final StepFunction moved = new StepFunction(64);
    private final StepFunction kept = new StepFunction(64);

    /** Runs forward along a finished pass, at a limit that is no more than the pass's own. */
    Corridor(Setting setting, AirPass pass, int limit) {
        this.problem = setting.problem();
        this.graph = setting.graph();
        this.heads = setting.heads();
        this.pass = pass;
        this.limit = limit;
        begin = new StepFunction[graph.size][][];
        end = new StepFunction[graph.size][][];
        any = new boolean[graph.size][];
        widest = null;
        for (int e : graph.visit) {
            event(e);
        }
    }

    private Corridor(Corridor other, int low, int high) {
        this.problem = other.problem;
        this.graph = other.graph;
        this.heads = other.heads;
        this.pass = other.pass;
        this.limit = other.limit;
        begin = other.begin;
        end = other.end;
        any = other.any;
        widest = new int[] {low, high};
    }

    // What the rest costs at whatever opening of the anchor it is least.
    @Override
    public Ceiling asTheyAre(int low, int high) {
        return pass.frame().isAsTheyAre() ? this : new Corridor(this, low, high);
    }

    private void event(int e) {
        int contexts = heads.contexts(e);
        int options = problem.options().get(e).size();
        begin[e] = new StepFunction[contexts][options];
        end[e] = new StepFunction[contexts][options];
        any[e] = new boolean[contexts];
        if (graph.parent[e] < 0) {
            start(e);
        } else {
            arrive(graph.parent[e], e);
        }
        for (int x = 0; x < contexts; x++) {
            for (int c = 0; c < options; c++) {
                StepFunction beginning = begin[e][x][c];
                if (beginning != null) {
                    StepFunction ending = ending(e, x, c, beginning);
                    end[e][x][c] = ending.isEmpty() ? null : ending;
                    any[e][x] |= !ending.isEmpty();
                }
            }
        }
    }

    private void start(int e) {
        for (int x = 0; x < begin[e].length; x++) {
            for (int c = 0; c < begin[e][x].length; c++) {
                int[] begin = pass.frame().begin(e);
                keep(e, x, c, StepFunction.constant(begin[0], begin[1], 0));
            }
        }
    }

    private void keep(int e, int x, int c, StepFunction beginning) {
        StepFunction ahead = pass.ahead[e][x][c];
        if (ahead != null) {
            kept.setWithin(beginning, ahead, limit);
            begin[e][x][c] = kept.isEmpty() ? null : kept.trimmed();
        }
    }

    private void arrive(int u, int e) {
        int[][] pair = problem.pairs().get(graph.treeEdge[e]);
        @Nullable StepFunction[][] leaving = new StepFunction[heads.contexts(u)][pair.length];
        for (int y = 0; y < leaving.length; y++) {
            for (int i = 0; i < pair.length; i++) {
                StepFunction ending = end[u][y][i];
                leaving[y][i] = ending == null ? null : pass.beside(u, e, y, i, ending);
            }
        }
        for (int x = 0; x < begin[e].length; x++) {
            // Inside a loop the context stays.
            boolean stays = heads.of(e) >= 0 && heads.of(e) != e;
            for (int c = 0; c < begin[e][x].length; c++) {
                StepFunction ahead = pass.ahead[e][x][c];
                if (ahead != null) {
                    lowest.clear();
                    int room = limit - ahead.least();
                    for (int y = stays ? x : 0; y < (stays ? x + 1 : leaving.length); y++) {
                        add(leaving[y], pair, c, room);
                    }
                    keep(e, x, c, lowest.function());
                }
            }
        }
    }

    private void add(@Nullable StepFunction[] leaving, int[][] pair, int c, int room) {
        for (int i = 0; i < leaving.length; i++) {
            StepFunction from = leaving[i];
            if (from != null && from.least() + pair[i][c] <= room) {
                lowest.add(from, pair[i][c]);
            }
        }
    }

    private StepFunction ending(int e, int x, int c, StepFunction beginning) {
        Option option = problem.options().get(e).get(c);
        StepFunction after = pass.after[e][x][c];
        int own = option.cost() + beginning.least() + (after == null ? 0 : after.least());
        lowest.clear();
        for (Move move : option.moves()) {
            if (own + move.cost() > limit) {
                continue;
            }
            int from = option.sign() > 0 ? move.low() : -move.high();
            int to = option.sign() > 0 ? move.high() : -move.low();
            moved.setMoved(beginning, from, to, option.cost() + move.cost());
            kept.setWithin(moved, after, limit);
            if (!kept.isEmpty()) {
                lowest.add(kept, 0);
            }
        }
        return lowest.copy();
    }

    @Override
    public boolean allowsAny(int e, int x) {
        return any[e][x];
    }

    @Override
    public boolean allows(int e, int x, int c, int within) {
        return end[e][x][c] != null;
    }

    @Override
    public StepFunction clipEnding(int e, int x, int c, StepFunction ending, int within) {
        return within(ending, end[e][x][c], within);
    }

    @Override
    public StepFunction clipBeginning(int e, int x, int c, StepFunction beginning, int within) {
        return within(beginning, begin[e][x][c], within);
    }

    private StepFunction within(StepFunction function, @Nullable StepFunction rest, int within) {
        kept.clear();
        if (rest != null) {
            kept.setWithin(function, widest == null ? rest : widened(rest, widest), within);
        }
        return kept;
    }

    private StepFunction widened(StepFunction rest, int[] anchor) {
        if (rest != source) {
            moved.setMoved(rest, anchor[0], anchor[1], 0);
            source = rest;
        }
        return moved;
    }

    @Override
    public double room(int e, int x, int c, int within) {
        StepFunction beginning = begin[e][x][c];
        return beginning == null ? -1 : within - beginning.least();
    }

    @Override
    public double spare(int e, int f, int x, int c, int within) {
        StepFunction ending = end[e][x][c];
        return ending == null ? -1 : within - ending.least();
    }

    @Override
    public double ahead(int e, int x, int c) {
        StepFunction ahead = pass.ahead[e][x][c];
        return ahead == null ? Problem.NEVER : ahead.least();
    }
}
