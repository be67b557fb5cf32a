package org.bellowscribe.solver;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.model.Attempt;
import org.bellowscribe.solver.model.Model;
import org.bellowscribe.solver.reason.BadStart;
import org.bellowscribe.solver.reason.MissingAir;
import org.bellowscribe.solver.reason.MissingNotes;
import org.bellowscribe.solver.reason.PinConflict;
import org.bellowscribe.solver.reason.UnlikeRemark;
import org.jspecify.annotations.Nullable;

/**
 * Decides for every event of a tune the buttons, fingers, place of the hand, bellows direction, left hand and air, at the
 * least cost of the rules within the limits. Deterministic: bounded in expanded states, not in time.
 */
public final class Solver {

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
        return solve(new Task(tune, instrument, wanted, options, 0));
    }

    /** Solves a task. */
    public static Outcome solve(Task task) {
        List<Diagnostic> missing = new MissingNotes(task.tune(), task.instrument()).diagnose();
        if (!missing.isEmpty()) {
            return new Outcome.Unplayable(missing);
        }
        Model model = new Model(task.tune(), task.instrument(), task.wanted(), task.options());
        if (model.firstBlocked() >= 0) {
            return new Outcome.Unplayable(new PinConflict(task).diagnose());
        }
        Attempt attempt = Attempt.of(task, model);
        if (!attempt.isFound()) {
            return new Outcome.Unplayable(whyNot(task, attempt));
        }
        List<Diagnostic> remarks = new ArrayList<>();
        if (attempt.isOnceOnly()) {
            remarks.add(onceOnly(task, attempt));
        }
        Solution solution = attempt.marks(task);
        if (!solution.cost().isNearlyProved()) {
            remarks.add(notProved(solution.cost()));
        }
        if (!solution.unlike().isEmpty()) {
            remarks.add(UnlikeRemark.of(task.tune(), solution.unlike()));
        }
        return new Outcome.Solved(solution, remarks);
    }

    /** Returns the marks of a task whose notes are all on the instrument, or null if there are none: does not ask why. */
    public static @Nullable Solution attempt(Task task) {
        return Attempt.solution(task);
    }

    /** Returns true if a task can be played, whatever it costs: takes little more than reading it. */
    public static boolean isPossible(Task task) {
        return new MissingNotes(task.tune(), task.instrument()).diagnose().isEmpty() && Attempt.succeeds(task);
    }

    /** Returns true if every event has something to play that the pins allow, whether the bellows last or not. */
    public static boolean hasChoices(Task task) {
        return new Model(task.tune(), task.instrument(), task.wanted(), task.options()).firstBlocked() < 0;
    }

    private static List<Diagnostic> whyNot(Task task, Attempt attempt) {
        List<Diagnostic> pins = new PinConflict(task).diagnose();
        if (!pins.isEmpty()) {
            return pins;
        }
        Diagnostic start = BadStart.of(task);
        return start == null ? new MissingAir(task, attempt.problem()).diagnose(attempt.answer()) : List.of(start);
    }

    private static Diagnostic onceOnly(Task task, Attempt attempt) {
        String drift = new MissingAir(task, attempt.problem()).driftOfAll();
        String why = attempt.first().isProved()
                ? "The bellows cannot come back to where they began, whatever is played"
                : "No marks were found that bring the bellows back to where they began";
        return Diagnostic.note(
                DiagnosticCode.ONCE_ONLY,
                Place.FILE,
                "%s%s: the marks are for one time through.".formatted(why, drift.isEmpty() ? "" : " (" + drift + ")"),
                "Maybe set the bellows with the air button before playing the tune again.");
    }

    private static Diagnostic notProved(Cost cost) {
        return Diagnostic.note(
                DiagnosticCode.NOT_PROVED,
                Place.FILE,
                "The marks cost %d points; the cheapest cost at least %d.".formatted(cost.total(), cost.lowerBound()));
    }
}
