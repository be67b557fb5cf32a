package org.bellowscribe.solver.search;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Lower bounds without openings: for each event, context and option the least cost from there on and the least cost of
 * all the rest, with air at its {@link Prices}. Either over the whole tune or inside each stretch alone, with what lies {@link Beyond}.
 */
final class Bounds {

    private final Setting setting;
    private final Problem problem;
    private final Graph graph;
    private final Heads heads;
    private final Node node;
    private final Prices prices;
    /** What comes beyond each stretch; null for bounds over the whole tune. */
    private final @Nullable Beyond beyond;

    /** From the event on (itself included), [event][context][option]. */
    final double[][][] ahead;
    /** All the rest. */
    final double[][][] rest;
    /** For each event but the first: least cost from there on, pair cost included, by its parent's context and option. */
    private final double[][][] onward;

    Bounds(Setting setting, Node node, Prices prices, @Nullable Beyond beyond) {
        this.setting = setting;
        this.problem = setting.problem();
        this.graph = setting.graph();
        this.heads = setting.heads();
        this.node = node;
        this.prices = prices;
        this.beyond = beyond;
        ahead = new double[graph.size][][];
        rest = new double[graph.size][][];
        onward = new double[graph.size][][];
    }

    /** Finds the bounds of a stretch alone. */
    void look(int stretch) {
        lookAhead(stretch);
        lookBack(stretch);
    }

    /** Finds what lies ahead in a stretch; that of all stretches after it must be known. */
    void lookAhead(int stretch) {
        for (int i = graph.size - 1; i >= 0; i--) {
            if (graph.stretch[graph.visit[i]] == stretch) {
                ahead(graph.visit[i]);
            }
        }
    }

    /** Finds the rest for each event of a stretch; that of the stretch before it must be known. */
    void lookBack(int stretch) {
        for (int e : graph.visit) {
            if (graph.stretch[e] == stretch) {
                back(e);
            }
        }
    }

    private void ahead(int e) {
        List<Option> options = problem.options().get(e);
        boolean @Nullable [] allowed = node.allowed(e);
        boolean isHead = heads.of(e) == e;
        int contexts = heads.contexts(e);
        ahead[e] = new double[contexts][options.size()];
        for (int f : graph.children.get(e)) {
            onward[f] = new double[contexts][options.size()];
        }
        for (int c = 0; c < options.size(); c++) {
            double own = options.get(c).cost() + prices.leastMove(e, c);
            for (int x = 0; x < contexts; x++) {
                boolean possible = (allowed == null || allowed[c]) && !(isHead && x != c);
                ahead[e][x][c] = possible ? Math.min(Surroundings.NEVER, own + next(e, x, c)) : Surroundings.NEVER;
            }
        }
    }

    private double next(int e, int x, int c) {
        double sum = 0;
        for (int k : graph.jumpsFrom.get(e)) {
            sum += JumpCost.of(setting, node, k, x, c);
        }
        for (int f : graph.children.get(e)) {
            double least = child(e, f, x, c);
            onward[f][x][c] = least;
            sum += least;
        }
        return sum;
    }

    private double child(int e, int f, int x, int c) {
        int[] pair = problem.pairs().get(graph.treeEdge[f])[c];
        if (beyond != null && graph.stretch[f] != graph.stretch[e]) {
            return beyond.least(f, x, pair);
        }
        double least = Surroundings.NEVER;
        if (heads.of(f) == f) {
            for (int j = 0; j < pair.length; j++) {
                least = Math.min(least, pair[j] + ahead[f][j][j]);
            }
        } else {
            double[] beyond = ahead[f][heads.of(f) < 0 ? 0 : x];
            for (int j = 0; j < pair.length; j++) {
                least = Math.min(least, pair[j] + beyond[j]);
            }
        }
        return least;
    }

    private void back(int e) {
        rest[e] = new double[heads.contexts(e)][problem.options().get(e).size()];
        int u = graph.parent[e];
        if (u < 0) {
            return;
        }
        if (beyond != null && graph.stretch[u] != graph.stretch[e]) {
            beyond.giveBack(e, rest[e]);
            return;
        }
        for (double[] row : rest[e]) {
            Arrays.fill(row, Surroundings.NEVER);
        }
        int[][] pairs = problem.pairs().get(graph.treeEdge[e]);
        for (int x = 0; x < heads.contexts(u); x++) {
            for (int i = 0; i < pairs.length; i++) {
                if (ahead[u][x][i] >= Surroundings.NEVER || rest[u][x][i] >= Surroundings.NEVER) {
                    continue;
                }
                double without = rest[u][x][i] + ahead[u][x][i] - onward[e][x][i];
                spread(e, x, pairs[i], without);
            }
        }
    }

    private void spread(int e, int x, int[] pair, double without) {
        if (heads.of(e) == e) {
            for (int j = 0; j < pair.length; j++) {
                rest[e][j][j] = Math.min(rest[e][j][j], without + pair[j]);
            }
            return;
        }
        double[] row = rest[e][heads.of(e) < 0 ? 0 : x];
        for (int j = 0; j < pair.length; j++) {
            row[j] = Math.min(row[j], without + pair[j]);
        }
    }

    /** Returns the least from an event on, pair cost included, if the event before takes an option. */
    double leastOnward(int f, int x, int c) {
        return onward[f][x][c];
    }

    /** Returns the bound of the whole, or of one stretch alone, before what the constraints give back. */
    double total(int root) {
        double least = Surroundings.NEVER;
        for (int x = 0; x < ahead[root].length; x++) {
            for (int c = 0; c < ahead[root][x].length; c++) {
                least = Math.min(least, ahead[root][x][c] + rest[root][x][c]);
            }
        }
        return least;
    }
}
