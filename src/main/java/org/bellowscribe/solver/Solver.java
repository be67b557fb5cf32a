package org.bellowscribe.solver;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.search.Answer;
import org.bellowscribe.solver.search.Problem;
import org.bellowscribe.solver.search.Search;

/**
 * Decides for every event of a tune the buttons, fingers, place of the hand, bellows direction, left hand and air, at the
 * least cost of the rules within the limits. Deterministic: bounded in expanded states, not in time.
 */
public final class Solver {

    // Where the start is free, the bellows begin a little under half open: published range one third to one half (W005,
    // "Concertutor", bellows page, concertutor.wordpress.com).
    private static final double USUAL_START = 0.42;
    private static final double THOUSANDTHS = 1000;

    private Solver() {}

    /**
     * Solves a tune.
     *
     * @param tune the tune, with at least one event
     * @param instrument the instrument
     * @param wanted what the left hand should sound; empty for none
     * @param options manner of playing and bounds
     */
    public static Outcome solve(Tune tune, Instrument instrument, List<WantedSound> wanted, SolverOptions options) {
        return solve(tune, instrument, wanted, options, 0);
    }

    /**
     * Solves a tune that was transposed.
     *
     * @param tune the tune as it is to sound, with at least one event
     * @param instrument the instrument
     * @param wanted what the left hand should sound; empty for none
     * @param options manner of playing and bounds
     * @param moved semitones by which the tune was moved, so that advice is told from the sheet
     */
    public static Outcome solve(
            Tune tune, Instrument instrument, List<WantedSound> wanted, SolverOptions options, int moved) {
        List<Diagnostic> missing = new MissingNotes(tune, instrument, moved).diagnose();
        if (!missing.isEmpty()) {
            return new Outcome.Unplayable(missing);
        }
        Model model = new Model(tune, instrument, wanted, options);
        int start = (int) (USUAL_START * instrument.bellows().capacity() * THOUSANDTHS);
        List<Diagnostic> remarks = new ArrayList<>();
        boolean again = options.times() == Times.AGAIN;
        Problem problem = model.problem(again);
        Answer answer = Search.solve(problem, options.cellLimit(), start);
        if (again && !answer.isFound()) {
            Problem once = model.problem(false);
            Answer onceOnly = Search.solve(once, options.cellLimit(), start);
            if (onceOnly.isFound()) {
                remarks.add(onceOnly(answer));
                again = false;
                problem = once;
                answer = onceOnly;
            }
        }
        if (!answer.isFound()) {
            return new Outcome.Unplayable(new MissingAir(tune, instrument, problem, options).diagnose(answer));
        }
        Solution solution = new SolutionBuilder(tune, instrument, model).build(answer, again);
        if (!solution.cost().isProved()) {
            remarks.add(notProved(solution.cost()));
        }
        return new Outcome.Solved(solution, remarks);
    }

    private static Diagnostic onceOnly(Answer again) {
        String why = again.isProved()
                ? "The bellows cannot come back to where they began, whatever is played"
                : "No marks were found that bring the bellows back to where they began";
        return Diagnostic.note(
                DiagnosticCode.ONCE_ONLY,
                Place.FILE,
                why + ": the marks are for one time through.",
                "Maybe set the bellows with the air button before playing the tune again.");
    }

    private static Diagnostic notProved(Cost cost) {
        return Diagnostic.note(
                DiagnosticCode.NOT_PROVED,
                Place.FILE,
                "The marks cost %d points; the cheapest cost at least %d.".formatted(cost.total(), cost.lowerBound()));
    }
}
