package org.bellowscribe.accompaniment;

import java.util.List;
import org.bellowscribe.theory.ChordSymbol;

/** The cheapest harmony of a whole tune, found span by span from both ends (dynamic programming). */
final class BestHarmony {

    private final HarmonyCosts costs;
    private final double[][] own;

    /**
     * Prepares the search.
     *
     * @param own for each span the points of each of its chords, changes not among them
     */
    BestHarmony(HarmonyCosts costs, double[][] own) {
        this.costs = costs;
        this.own = own;
    }

    /** Returns for each span and each of its chords the points of the cheapest harmony that has this chord there. */
    double[][] withEach() {
        double[][] best = new double[own.length][];
        double[] before = new double[0];
        for (int i = 0; i < own.length; i++) {
            best[i] = own[i].clone();
            for (int c = 0; i > 0 && c < best[i].length; c++) {
                best[i][c] += least(i, before, costs.chords(i).get(c), true);
            }
            before = best[i].clone();
        }
        double[] after = new double[0];
        for (int i = own.length - 1; i >= 0; i--) {
            double[] rest = new double[own[i].length];
            for (int c = 0; i + 1 < own.length && c < rest.length; c++) {
                rest[c] = least(i + 1, after, costs.chords(i).get(c), false);
            }
            for (int c = 0; c < rest.length; c++) {
                best[i][c] += rest[c];
                rest[c] += own[i][c];
            }
            after = rest;
        }
        return best;
    }

    // The cheapest way to or from a chord over the border at the start of a span; 0 where the other side has no chord.
    private double least(int span, double[] other, ChordSymbol chord, boolean forward) {
        List<ChordSymbol> others = costs.chords(forward ? span - 1 : span);
        double least = Double.MAX_VALUE;
        for (int b = 0; b < other.length; b++) {
            double change =
                    forward ? costs.change(span, others.get(b), chord) : costs.change(span, chord, others.get(b));
            least = Math.min(least, other[b] + change);
        }
        return other.length == 0 ? 0 : least;
    }
}
