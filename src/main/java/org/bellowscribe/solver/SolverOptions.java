package org.bellowscribe.solver;

/**
 * How to solve.
 *
 * @param manner the manner of playing
 * @param times how often the marks must be good for
 * @param airButton false if the air button must not be used at all
 * @param cellLimit states to expand at most before the proof is given up
 * @param pins what a teacher has fixed
 */
public record SolverOptions(Manner manner, Times times, boolean airButton, long cellLimit, Pins pins) {

    /** Enough to prove nearly every tune on usual bellows; a long slow song can use it up in a few seconds. */
    public static final long USUAL_CELL_LIMIT = 300_000;

    /** Creates options with nothing fixed. */
    public SolverOptions(Manner manner, Times times, boolean airButton, long cellLimit) {
        this(manner, times, airButton, cellLimit, Pins.NONE);
    }

    /** Returns these options with other pins. */
    public SolverOptions withPins(Pins fixed) {
        return new SolverOptions(manner, times, airButton, cellLimit, fixed);
    }
}
