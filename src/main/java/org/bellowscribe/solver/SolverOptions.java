package org.bellowscribe.solver;

/**
 * How to solve.
 *
 * @param manner the manner of playing
 * @param times how often the marks must be good for
 * @param airButton false if the air button must not be used at all
 * @param cellLimit states to expand at most before the proof is given up
 */
public record SolverOptions(Manner manner, Times times, boolean airButton, long cellLimit) {

    /** Enough to prove nearly every tune on usual bellows; a long slow song can use it up in a few seconds. */
    public static final long USUAL_CELL_LIMIT = 300_000;
}
