package org.bellowscribe.batch;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.Severity;
import org.bellowscribe.report.TuneSummary;
import org.jspecify.annotations.Nullable;

/**
 * What became of one file.
 *
 * @param source the file
 * @param done true if its result was written
 * @param summary figures of a marked tune; null otherwise
 * @param diagnostics remarks, in order
 * @param told lines about pins and questions, to stand under the figures
 */
public record Result(
        Source source, boolean done, @Nullable TuneSummary summary, List<Diagnostic> diagnostics, List<String> told) {

    /** Copies the lists. */
    public Result {
        diagnostics = List.copyOf(diagnostics);
        told = List.copyOf(told);
    }

    /** Creates a result about which there is nothing more to tell. */
    public Result(Source source, boolean done, @Nullable TuneSummary summary, List<Diagnostic> diagnostics) {
        this(source, done, summary, diagnostics, List.of());
    }

    /** Returns a result of which nothing was written. */
    static Result failed(Source source, List<Diagnostic> diagnostics) {
        return new Result(source, false, null, diagnostics);
    }

    /** Returns this result with a further remark. */
    Result with(Diagnostic diagnostic) {
        List<Diagnostic> all = new ArrayList<>(diagnostics);
        all.add(diagnostic);
        return new Result(source, done, summary, all, told);
    }

    /** Returns the first error, or null if there is none. */
    public @Nullable Diagnostic firstError() {
        return diagnostics.stream()
                .filter(diagnostic -> diagnostic.severity() == Severity.ERROR)
                .findFirst()
                .orElse(null);
    }
}
