package org.bellowscribe.difficulty;

import org.bellowscribe.difficulty.grading.Term;

/**
 * What a term adds to the difficulty of a tune.
 *
 * @param term the term
 * @param figure how much of it there is, in its unit
 * @param weight points for one
 * @param event 0-based index of the event at which the stretch begins that the figure is of; -1 if it is of the whole tune
 *     or there is none
 */
public record TermPoints(Term term, double figure, double weight, int event) {

    /** Returns the points, figure times weight. */
    public double points() {
        return figure * weight;
    }
}
