package org.bellowscribe.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.Severity;
import org.bellowscribe.report.TuneSummary;
import org.jspecify.annotations.Nullable;

/**
 * What became of one file.
 *
 * @param source the file
 * @param outcome how it ended
 * @param summary figures of a marked tune; null otherwise
 * @param diagnostics remarks, in order
 * @param told lines about pins and questions, to stand under the figures
 * @param title title of the tune; empty if it could not be read
 */
public record Result(
        Source source,
        Outcome outcome,
        @Nullable TuneSummary summary,
        List<Diagnostic> diagnostics,
        List<String> told,
        String title) {

    /** How the work on a file ended. */
    public enum Outcome {
        /** Its result was written. */
        DONE,
        /** Its result stands already, and everything that it depends on is as it was. */
        UNCHANGED,
        /** Nothing was written, because nothing was to be: this would be done. */
        TO_DO,
        /** Nothing was written, because nothing was to be: its result is not what it would be today. */
        OUT_OF_DATE,
        /** Nothing came of it; the remarks say why. */
        REFUSED;

        /** Returns the word for it, in kebab-case. */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** How an advice begins that names a key in which the tune can be played. */
    private static final String OTHER_KEY = "Maybe --transpose ";

    /** Copies the lists. */
    public Result {
        diagnostics = List.copyOf(diagnostics);
        told = List.copyOf(told);
    }

    /** Creates the result of a tune whose title is among its figures, if it has any. */
    public Result(
            Source source,
            boolean done,
            @Nullable TuneSummary summary,
            List<Diagnostic> diagnostics,
            List<String> told) {
        this(
                source,
                done ? Outcome.DONE : Outcome.REFUSED,
                summary,
                diagnostics,
                told,
                summary == null ? "" : summary.title());
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
        return new Result(source, outcome, summary, all, told, title);
    }

    /** Returns this result with the title of the tune. */
    Result titled(String name) {
        return new Result(source, outcome, summary, diagnostics, told, name);
    }

    /** Returns this result as one of another source. */
    Result of(Source other) {
        return new Result(other, outcome, summary, diagnostics, told, title);
    }

    /** Returns this result with further lines to tell. */
    Result telling(List<String> more) {
        List<String> all = new ArrayList<>(told);
        all.addAll(more);
        return tellingOnly(all);
    }

    /** Returns this result with other lines to tell. */
    Result tellingOnly(List<String> lines) {
        return new Result(source, outcome, summary, diagnostics, lines, title);
    }

    /** Returns this result, ended otherwise. */
    Result as(Outcome other) {
        return new Result(source, other, summary, diagnostics, told, title);
    }

    /** Tells whether nothing stood in the way. */
    public boolean done() {
        return outcome != Outcome.REFUSED;
    }

    /** Tells whether nothing was written but another key is known in which the tune can be played. */
    public boolean isPlayableTransposed() {
        return !done()
                && diagnostics.stream()
                        .flatMap(remark -> remark.advice().stream())
                        .anyMatch(advice -> advice.startsWith(OTHER_KEY));
    }

    /** Returns the first error, or null if there is none. */
    public @Nullable Diagnostic firstError() {
        return diagnostics.stream()
                .filter(diagnostic -> diagnostic.severity() == Severity.ERROR)
                .findFirst()
                .orElse(null);
    }
}
