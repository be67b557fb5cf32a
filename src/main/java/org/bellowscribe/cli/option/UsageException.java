package org.bellowscribe.cli.option;

import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.PlainText;

/** The command line is wrong; the message says how, in lines for people. */
public final class UsageException extends Exception {

    private static final long serialVersionUID = 1L;

    // For this run only; the exception is never serialized.
    private final transient List<Diagnostic> diagnostics;

    /** Creates the exception with its lines. */
    public UsageException(String message) {
        this(message, List.of());
    }

    /**
     * Creates the exception of a definition that is wrong or not there.
     *
     * @param diagnostics what is wrong with it
     */
    UsageException(String message, List<Diagnostic> diagnostics) {
        super(message);
        this.diagnostics = List.copyOf(diagnostics);
    }

    /** Returns what is wrong with the definition that an option names; empty if something else is wrong. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }

    /**
     * Says that an option does not take a value.
     *
     * @param option its name without hyphens
     * @param takes what it takes
     * @param text the value
     */
    public static UsageException notTaken(String option, String takes, String text) {
        return new UsageException(
                "--%s takes %s, not %s.".formatted(option, takes, text.isEmpty() ? "nothing" : PlainText.line(text)));
    }

    /** Returns the message. */
    public String lines() {
        return String.valueOf(getMessage());
    }
}
