package org.bellowscribe.solver.search;

import org.jspecify.annotations.Nullable;

/** Follows a finished pass forward and reads off the options and moves of a cheapest answer; ties go to the lowest. */
final class Trace {

    final int[] option;
    final int[] move;
    private final Problem problem;
    private final Graph graph;
    private final Heads heads;
    private final int[] context;
    private final int[] opening;
    /** Openings at the ends of the events, as the pass counts them. */
    final int[] end;

    Trace(Setting setting, AirPass pass) {
        this.problem = setting.problem();
        this.graph = setting.graph();
        this.heads = setting.heads();
        option = new int[graph.size];
        move = new int[graph.size];
        context = new int[graph.size];
        opening = new int[graph.size];
        end = new int[graph.size];
        start(pass);
        for (int e : graph.visit) {
            step(pass, e);
        }
    }

    private void start(AirPass pass) {
        int root = graph.visit[0];
        int least = Problem.NEVER;
        for (int x = 0; x < pass.ahead[root].length; x++) {
            for (int c = 0; c < pass.ahead[root][x].length; c++) {
                StepFunction function = pass.ahead[root][x][c];
                if (function != null && function.least() < least) {
                    least = function.least();
                    option[root] = c;
                    context[root] = x;
                    opening[root] = function.middleOfLeast();
                }
            }
        }
    }

    private void step(AirPass pass, int e) {
        int c = option[e];
        int x = context[e];
        end[e] = spend(pass, e, at(pass.ahead[e][x][c], opening[e]));
        for (int f : graph.children.get(e)) {
            int begin = pass.frame().isCut(e) ? 0 : end[e];
            int[] pair = problem.pairs().get(graph.treeEdge[f])[c];
            int least = Problem.NEVER;
            for (int j = 0; j < pair.length; j++) {
                StepFunction next = pass.ahead[f][heads.context(f, x, j)][j];
                if (next != null && pair[j] + next.at(begin) < least) {
                    least = pair[j] + next.at(begin);
                    option[f] = j;
                }
            }
            context[f] = heads.context(f, x, option[f]);
            opening[f] = begin;
        }
    }

    /** Returns by how much an anchor lies above the one before it, on the first way there. */
    int rise(int anchor) {
        return end[graph.entry(anchor)];
    }

    // Finds the first move that explains the cost and returns the opening after it.
    private int spend(AirPass pass, int e, int cost) {
        Option chosen = problem.options().get(e).get(option[e]);
        StepFunction after = pass.after[e][context[e]][option[e]];
        for (int m = 0; after != null && m < chosen.moves().size(); m++) {
            Move candidate = chosen.moves().get(m);
            int low = opening[e] + (chosen.sign() > 0 ? candidate.low() : -candidate.high());
            int high = opening[e] + (chosen.sign() > 0 ? candidate.high() : -candidate.low());
            for (int i = 0; i < after.size; i++) {
                int start = Math.max(low, after.from[i]);
                int end = Math.min(high, after.to[i]);
                if (start <= end && after.value[i] + candidate.cost() + chosen.cost() == cost) {
                    move[e] = m;
                    return start + (end - start) / 2;
                }
            }
        }
        throw new IllegalStateException("No move explains the cost (%d) at event %d.".formatted(cost, e));
    }

    private static int at(@Nullable StepFunction function, int opening) {
        if (function == null) {
            throw new IllegalStateException("The trace left the pass at opening %d.".formatted(opening));
        }
        return function.at(opening);
    }
}
