package org.bellowscribe.diagnostic;

import java.util.List;

/**
 * A remark to the user about one file.
 *
 * @param severity how much it matters
 * @param code stable code
 * @param place where in the file
 * @param text one sentence with the values, ending in a full stop
 * @param advice what the reader can do, one sentence each; may be empty
 */
public record Diagnostic(Severity severity, DiagnosticCode code, Place place, String text, List<String> advice) {

    /** Copies the advice. Text and advice may quote a file: each becomes one plain line. */
    public Diagnostic {
        text = PlainText.line(text);
        advice = advice.stream().map(PlainText::line).toList();
    }

    /** Returns an error: the tune is not marked. */
    public static Diagnostic error(DiagnosticCode code, Place place, String text, String... advice) {
        return new Diagnostic(Severity.ERROR, code, place, text, List.of(advice));
    }

    /** Returns a warning: marked, but please look. */
    public static Diagnostic warning(DiagnosticCode code, Place place, String text, String... advice) {
        return new Diagnostic(Severity.WARNING, code, place, text, List.of(advice));
    }

    /** Returns a note. */
    public static Diagnostic note(DiagnosticCode code, Place place, String text, String... advice) {
        return new Diagnostic(Severity.NOTE, code, place, text, List.of(advice));
    }

    /** Returns the remark without advice. */
    public Diagnostic withoutAdvice() {
        return new Diagnostic(severity, code, place, text, List.of());
    }

    /**
     * Returns the remark as printed: {@code file: place: severity [code] Sentence.}, then one indented line for each
     * piece of advice.
     *
     * @param file name of the file as the user gave it
     */
    public String print(String file) {
        String where = PlainText.line(place.describe());
        StringBuilder line = new StringBuilder(PlainText.line(file)).append(": ");
        if (!where.isEmpty()) {
            line.append(where).append(": ");
        }
        line.append(severity.label())
                .append(" [")
                .append(code.id())
                .append("] ")
                .append(text);
        advice.forEach(sentence -> line.append("\n  ").append(sentence));
        return line.toString();
    }
}
