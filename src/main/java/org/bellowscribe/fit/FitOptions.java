package org.bellowscribe.fit;

import org.bellowscribe.solver.SolverOptions;

/**
 * How to try.
 *
 * @param within how many semitones up and down to transpose at most, 0 to 12
 * @param solved how many trials of a tune to solve at most: those that look easiest
 * @param solver how to solve them
 */
public record FitOptions(int within, int solved, SolverOptions solver) {

    /** States that one trial may expand: enough to find marks, not always to prove them the cheapest. */
    public static final long CELL_LIMIT = 100_000;

    /** Checks the ranges. */
    public FitOptions {
        if (within < 0 || within > 12 || solved < 1) {
            throw new IllegalArgumentException(
                    "The semitones (%d) must be 0 to 12, and the trials to solve (%d) 1 or more."
                            .formatted(within, solved));
        }
    }
}
