package org.bellowscribe.cli;

import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Severity;

/** Which notes are printed. Of many files those about what was assumed, which are no news in most, are only counted. */
final class Notes {

    private enum Shown {
        NONE,
        NEWS,
        ALL
    }

    private final Shown shown;
    private int hidden;

    private Notes(Shown shown) {
        this.shown = shown;
    }

    /**
     * Returns what a line asks for.
     *
     * @param files how many files it is about
     */
    static Notes of(CommandWords words, int files) {
        if (words.has(FileOptions.QUIET)) {
            return new Notes(Shown.NONE);
        }
        return new Notes(files > 1 && !words.has(FileOptions.VERBOSE) ? Shown.NEWS : Shown.ALL);
    }

    /**
     * Tells whether a remark is printed, and counts it if only its number is.
     *
     * @param isNew false if it was told before, of a tune that has not changed since
     */
    boolean isShown(Diagnostic remark, boolean isNew) {
        if (remark.severity() != Severity.NOTE) {
            return true;
        }
        if (!isNew && shown == Shown.NEWS) {
            return false;
        }
        boolean counted = shown == Shown.NEWS && remark.code() == DiagnosticCode.ASSUMED;
        hidden += counted ? 1 : 0;
        return shown != Shown.NONE && !counted;
    }

    /** Tells how many were counted. */
    void tellHidden(Terminal terminal) {
        if (hidden > 0) {
            terminal.err()
                    .println("%s about what was assumed, such as a tempo; --verbose shows %s."
                            .formatted(hidden == 1 ? "1 note" : hidden + " notes", hidden == 1 ? "it" : "them"));
        }
    }
}
