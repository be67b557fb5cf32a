package org.bellowscribe.solver.search;

import org.jspecify.annotations.Nullable;

/**
 * What a stretch that is looked at alone is charged for what comes after it, and given back for where it begins. Each
 * first event of a stretch has a potential for each option: about what it costs from there to the end of the tune. A
 * stretch pays the potential at which the next begins and is given back its own, so all stretches together cost what the
 * tune does, whatever the potentials; good ones make them agree on where one ends and the next begins, and the sum of what
 * each costs at least by itself is close to what the tune costs.
 */
final class Beyond {

    private final Heads heads;
    /** Potentials [event][context][option] of the first events of all stretches but the first; null elsewhere. */
    private final int[][][] potential;

    /** Takes the potentials from bounds over the whole tune. */
    Beyond(Graph graph, Heads heads, double[][][] whole) {
        this.heads = heads;
        potential = new int[graph.size][][];
        for (int e : graph.firsts) {
            potential[e] = new int[whole[e].length][];
            for (int x = 0; x < potential[e].length; x++) {
                potential[e][x] = new int[whole[e][x].length];
                for (int c = 0; c < potential[e][x].length; c++) {
                    double ahead = graph.parent[e] < 0 ? 0 : Math.floor(whole[e][x][c]);
                    potential[e][x][c] = (int) Math.min(Problem.NEVER, ahead);
                }
            }
        }
    }

    /**
     * Learns from a pass over a stretch what it costs from there.
     *
     * @param found what the pass has found [context][option]; what it has not found costs more than its limit
     */
    void learn(int first, @Nullable StepFunction[][] found, int limit) {
        for (int x = 0; x < potential[first].length; x++) {
            for (int c = 0; c < potential[first][x].length; c++) {
                StepFunction ahead = found[x][c];
                int cost = ahead == null ? Problem.NEVER : ahead.at(0);
                int more = Math.min(Problem.NEVER, potential[first][x][c] + limit + 1);
                potential[first][x][c] = cost < Problem.NEVER ? cost : more;
            }
        }
    }

    /** Returns the least that is paid for going on to a stretch. */
    int least(int first, int x, int[] pair) {
        int least = Problem.NEVER;
        for (int j = 0; j < pair.length; j++) {
            least = Math.min(least, pair[j] + potential[first][heads.context(first, x, j)][j]);
        }
        return least;
    }

    /** Returns what a stretch is given back for beginning with an option. */
    int potential(int first, int x, int c) {
        return potential[first][x][c];
    }

    /** Writes down what a stretch is given back, as a cost, for each context and option of its first event. */
    void giveBack(int first, double[][] rest) {
        for (int x = 0; x < rest.length; x++) {
            for (int c = 0; c < rest[x].length; c++) {
                int given = potential[first][x][c];
                rest[x][c] = given >= Problem.NEVER ? Surroundings.NEVER : -given;
            }
        }
    }
}
