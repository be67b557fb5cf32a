package org.bellowscribe.solver;

import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;

/** What came of solving a tune. */
public sealed interface Outcome {

    /**
     * The tune can be played.
     *
     * @param solution the marks
     * @param diagnostics notes and warnings
     */
    record Solved(Solution solution, List<Diagnostic> diagnostics) implements Outcome {
        /** Copies the list. */
        public Solved {
            diagnostics = List.copyOf(diagnostics);
        }
    }

    /**
     * The tune cannot be played on the instrument.
     *
     * @param diagnostics why, at least one of them an error
     */
    record Unplayable(List<Diagnostic> diagnostics) implements Outcome {
        /** Copies the list. */
        public Unplayable {
            diagnostics = List.copyOf(diagnostics);
        }
    }
}
