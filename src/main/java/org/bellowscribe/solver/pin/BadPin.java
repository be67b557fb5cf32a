package org.bellowscribe.solver.pin;

import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;

/** The error of a pin that cannot be meant, at its entry in the file. */
final class BadPin {

    private BadPin() {}

    static DiagnosedException of(DefinitionElement entry, String text, String... advice) {
        return new DiagnosedException(Diagnostic.error(DiagnosticCode.BAD_DEFINITION, entry.place(), text, advice));
    }
}
