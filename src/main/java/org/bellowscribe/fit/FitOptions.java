package org.bellowscribe.fit;

import java.util.List;
import org.bellowscribe.solver.SolverOptions;

/**
 * How to try.
 *
 * @param semitones the transpositions to try, each from -24 to 24, at least one
 * @param solved how many trials of a tune to solve at most, 0 or more: those that look easiest, each instrument once
 *     before any twice
 * @param solver how to solve them
 */
public record FitOptions(List<Integer> semitones, int solved, SolverOptions solver) {

    /** States that one trial may expand: enough to find marks, not always to prove them the cheapest. */
    public static final long CELL_LIMIT = 100_000;

    /** The most semitones that a tune can be moved either way. */
    public static final int MOST_SEMITONES = 24;

    /** Checks the ranges. */
    public FitOptions {
        semitones = List.copyOf(semitones);
        if (semitones.isEmpty() || semitones.stream().anyMatch(each -> Math.abs(each) > MOST_SEMITONES) || solved < 0) {
            throw new IllegalArgumentException(
                    "The semitones (%s) must be some from -%d to %d, and the trials to solve (%d) 0 or more."
                            .formatted(semitones, MOST_SEMITONES, MOST_SEMITONES, solved));
        }
    }
}
