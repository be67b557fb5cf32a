package org.bellowscribe.api;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;

/**
 * Something to say about a score.
 *
 * @param severity {@code error} (nothing was marked), {@code warning} or {@code note}
 * @param code what it is about, as README lists them, such as {@code no-button}
 * @param place where it is, in words, such as {@code measure 7}; empty for the score as a whole
 * @param text one sentence
 * @param advice what can be done, one sentence each; may be empty
 */
public record Remark(String severity, String code, String place, String text, List<String> advice)
        implements Serializable {

    /** Copies the advice. */
    public Remark {
        // A list that can be sent.
        advice = List.copyOf(advice);
    }

    static Remark of(Diagnostic diagnostic) {
        return new Remark(
                diagnostic.severity().label(),
                diagnostic.code().id(),
                diagnostic.place().describe(),
                diagnostic.text(),
                new ArrayList<>(diagnostic.advice()));
    }

    static List<Remark> of(List<Diagnostic> diagnostics) {
        return diagnostics.stream().map(Remark::of).toList();
    }

    @Override
    public String toString() {
        return (place.isEmpty() ? "" : place + ": ") + severity + " [" + code + "] " + text;
    }
}
