package org.bellowscribe.solver.reason;

import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.model.Attempt;
import org.jspecify.annotations.Nullable;

/** Says that the bellows cannot begin as open as asked, if they can begin otherwise. */
public final class BadStart {

    private BadStart() {}

    /** Returns an error that names an opening that was tried and does, or null if the start is not what stands in the way. */
    public static @Nullable Diagnostic of(Task task) {
        Integer percent = task.options().startPercent();
        if (percent == null) {
            return null;
        }
        Solution free = Attempt.solution(task.with(task.options().startingAt(null)));
        if (free == null) {
            return null;
        }
        int first = task.tune().eventOrder().get(0);
        double opening = free.steps().get(first).openingBefore() / 1000.0;
        long found = Math.round(100 * opening / task.instrument().bellows().capacity());
        return Diagnostic.error(
                DiagnosticCode.NO_AIR,
                Place.FILE,
                "With the bellows %d %% open at the start no marks were found; with %d %% there are."
                        .formatted(percent, found),
                "Maybe begin %d %% open, or leave the start open.".formatted(found));
    }
}
