package org.bellowscribe.solver;

import org.jspecify.annotations.Nullable;

/**
 * How to solve.
 *
 * @param manner the manner of playing
 * @param times how often the marks must be good for
 * @param airButton false if the air button must not be used at all
 * @param cellLimit states to expand at most before the proof is given up
 * @param pins what a teacher has fixed
 * @param apart what to keep away from
 * @param startPercent how far open the bellows must be at the start, in percent of the capacity; null for any opening
 */
public record SolverOptions(
        Manner manner,
        Times times,
        boolean airButton,
        long cellLimit,
        Pins pins,
        Apart apart,
        @Nullable Integer startPercent) {

    /** Enough to prove nearly every tune on usual bellows; a long slow song can use it up in a few seconds. */
    public static final long USUAL_CELL_LIMIT = 500_000;

    /** Creates options with nothing to keep away from. */
    public SolverOptions(Manner manner, Times times, boolean airButton, long cellLimit, Pins pins) {
        this(manner, times, airButton, cellLimit, pins, Apart.FREE, null);
    }

    /** Creates options with nothing fixed. */
    public SolverOptions(Manner manner, Times times, boolean airButton, long cellLimit) {
        this(manner, times, airButton, cellLimit, Pins.NONE);
    }

    /** Returns these options with other pins. */
    public SolverOptions withPins(Pins fixed) {
        return new SolverOptions(manner, times, airButton, cellLimit, fixed, apart, startPercent);
    }

    /** Returns these options with another manner of playing. */
    public SolverOptions with(Manner other) {
        return new SolverOptions(other, times, airButton, cellLimit, pins, apart, startPercent);
    }

    /** Returns these options with something to keep away from. */
    public SolverOptions with(Apart away) {
        return new SolverOptions(manner, times, airButton, cellLimit, pins, away, startPercent);
    }

    /** Returns these options for playing so often. */
    public SolverOptions with(Times often) {
        return new SolverOptions(manner, often, airButton, cellLimit, pins, apart, startPercent);
    }

    /** Returns these options with the air button or without it. */
    public SolverOptions withAirButton(boolean pressed) {
        return new SolverOptions(manner, times, pressed, cellLimit, pins, apart, startPercent);
    }

    /** Returns these options with an opening for the start, in percent of the capacity, or with any if null. */
    public SolverOptions startingAt(@Nullable Integer percent) {
        return new SolverOptions(manner, times, airButton, cellLimit, pins, apart, percent);
    }

    /** Returns these options with a bound on the work. */
    public SolverOptions withCellLimit(long cells) {
        return new SolverOptions(manner, times, airButton, cells, pins, apart, startPercent);
    }
}
