package org.bellowscribe.cli.option;

import org.bellowscribe.diagnostic.PlainText;

/** The command line is wrong; the message says how, in lines for people. */
public final class UsageException extends Exception {

    private static final long serialVersionUID = 1L;

    /** Creates the exception with its lines. */
    public UsageException(String message) {
        super(message);
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
