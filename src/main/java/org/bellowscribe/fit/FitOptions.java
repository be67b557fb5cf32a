package org.bellowscribe.fit;

import java.util.List;
import java.util.Map;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.SolverOptions;

/**
 * How to try.
 *
 * @param semitones the transpositions to try, each from -24 to 24, at least one
 * @param solved how many trials of a tune to solve at most, 0 or more: those that look easiest, each instrument once
 *     before any twice
 * @param solver how to solve them
 * @param manners by id of an instrument, the manner in which it is played; the solver's where there is none
 */
public record FitOptions(List<Integer> semitones, int solved, SolverOptions solver, Map<String, Manner> manners) {

    /** States that one trial may expand: enough to find marks, not always to prove them the cheapest. */
    public static final long CELL_LIMIT = 100_000;

    /** The most semitones that a tune can be moved either way. */
    public static final int MOST_SEMITONES = 24;

    /** Creates options in which all instruments are played in one manner. */
    public FitOptions(List<Integer> semitones, int solved, SolverOptions solver) {
        this(semitones, solved, solver, Map.of());
    }

    /** Checks the ranges. */
    public FitOptions {
        manners = Map.copyOf(manners);
        semitones = List.copyOf(semitones);
        if (semitones.isEmpty() || semitones.stream().anyMatch(each -> Math.abs(each) > MOST_SEMITONES) || solved < 0) {
            throw new IllegalArgumentException(
                    "The semitones (%s) must be some from -%d to %d, and the trials to solve (%d) 0 or more."
                            .formatted(semitones, MOST_SEMITONES, MOST_SEMITONES, solved));
        }
    }

    /** Returns how to solve a trial on an instrument. */
    SolverOptions on(Instrument instrument) {
        return solver.with(manners.getOrDefault(instrument.id(), solver.manner()));
    }
}
