package org.bellowscribe.diagnostic;

import java.util.List;

/** Something the user gave cannot be used; says why in remarks, at least one of them an error. */
public final class DiagnosedException extends Exception {

    // Remarks are for this run only; the exception is never serialized.
    private final transient List<Diagnostic> diagnostics;

    /** Creates the exception with its remarks, in the order in which to print them. */
    public DiagnosedException(List<Diagnostic> diagnostics) {
        super(diagnostics.isEmpty() ? "" : diagnostics.get(0).text());
        this.diagnostics = List.copyOf(diagnostics);
    }

    /** Creates the exception with one remark. */
    public DiagnosedException(Diagnostic diagnostic) {
        this(List.of(diagnostic));
    }

    /** Returns the remarks in the order in which to print them. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }
}
