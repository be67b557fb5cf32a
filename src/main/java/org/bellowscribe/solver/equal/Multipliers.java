package org.bellowscribe.solver.equal;

import java.util.Arrays;

/**
 * Lagrange multipliers. One for each kind of marks at each event of a group: what the tune is charged for that kind and the
 * group is given back. And one for each measure of a group whose marks a block narrows: the part of the price of leaving
 * them that the tune is charged; the group pays the rest. As finely as the relaxation counts.
 */
final class Multipliers {

    private final Kinds kinds;
    private final int price;
    private final double[][] ofKind;
    private final double[] ofLeaving;

    /**
     * Creates multipliers of 0.
     *
     * @param price what a measure that differs costs
     */
    Multipliers(Kinds kinds, int events, int price) {
        this.kinds = kinds;
        this.price = price;
        ofKind = new double[events][];
        Arrays.setAll(ofKind, e -> new double[kinds.count(e)]);
        ofLeaving = new double[events];
    }

    private Multipliers(Multipliers other) {
        kinds = other.kinds;
        price = other.price;
        ofKind = new double[other.ofKind.length][];
        Arrays.setAll(ofKind, e -> other.ofKind[e].clone());
        ofLeaving = other.ofLeaving.clone();
    }

    Multipliers copy() {
        return new Multipliers(this);
    }

    /** Returns the kinds of marks that are charged. */
    Kinds kinds() {
        return kinds;
    }

    /** Charges the tune with half of the price of a measure: nothing is known yet of who should pay. */
    void share(int[] measure) {
        ofLeaving[measure[0]] = price / 2.0;
    }

    /** Charges the tune with all of the price of a measure, whose group has nothing left to choose. */
    void settle(int[] measure) {
        ofLeaving[measure[0]] = price;
        for (int e : measure) {
            Arrays.fill(ofKind[e], 0);
        }
    }

    /** Returns what the tune is charged for a kind of marks and its group is given back; may be negative. */
    int of(int e, int kind) {
        return (int) Math.round(ofKind[e][kind]);
    }

    /** Returns what the tune is charged for a measure that leaves what its block allows. */
    int ofLeaving(int[] measure) {
        return (int) Math.round(ofLeaving[measure[0]]);
    }

    /** Returns what the group pays for a measure that differs. */
    int restOfPrice(int[] measure) {
        return price - ofLeaving(measure);
    }

    /** Returns by how much all marks of an event are charged more, because costs must not be negative. */
    int shift(int e) {
        int least = 0;
        for (int k = 0; k < ofKind[e].length; k++) {
            least = Math.min(least, of(e, k));
        }
        return -least;
    }

    /** Moves charges from one kind of marks to another. */
    void move(int e, int from, int to, double step) {
        ofKind[e][to] += step;
        ofKind[e][from] -= step;
    }

    /** Charges the tune more for leaving, or less; never more than the price. */
    void raise(int[] measure, double step) {
        ofLeaving[measure[0]] = Math.max(0, Math.min(price, ofLeaving[measure[0]] + step));
    }
}
