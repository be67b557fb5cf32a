package org.bellowscribe.batch;

import org.bellowscribe.batch.ledger.Ledger;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/**
 * What a run does with results that stand already.
 *
 * @param ledger what is remembered of earlier runs; null if nothing is, as where each result takes the place of its score
 * @param mode what it does
 * @param anew true if tunes that have not changed are done all the same
 * @param tellsChanges true if changed marks are told in words
 */
public record Keeping(@Nullable Ledger ledger, Mode mode, boolean anew, boolean tellsChanges) {

    /** Does all anew and remembers nothing. */
    public static final Keeping NOTHING = new Keeping(null, Mode.WRITE, true, false);

    /** Answers a question; decides all tunes and writes nothing. */
    public static final Keeping ANSWER = new Keeping(null, Mode.ANSWER, true, false);

    /** What a run does. */
    public enum Mode {
        /** Writes results. */
        WRITE,
        /** Decides everything, but writes nothing. */
        ANSWER,
        /** Tells what would be done; decides and writes nothing. */
        FORETELL,
        /** Decides what has changed and compares; writes nothing. */
        COMPARE
    }

    /**
     * Puts what is remembered in order at the end of a run.
     *
     * @return what to tell if something cannot be remembered; else null
     */
    public @Nullable Diagnostic tidy() {
        byte[] tidied = ledger == null || !writes() || !ledger.hasFolder() ? null : ledger.tidied();
        if (ledger == null || tidied == null) {
            return null;
        }
        try {
            if (!ledger.isTidy(tidied)) {
                AtomicFile.write(ledger.file(), tidied);
            }
            return null;
        } catch (DiagnosedException e) {
            return Diagnostic.warning(
                    DiagnosticCode.UNWRITABLE,
                    Place.FILE,
                    "What was done cannot be remembered in order: %s"
                            .formatted(e.diagnostics().get(0).text()),
                    "The results stand; maybe the next run marks some tunes once more.");
        }
    }

    /** Tells whether results are written. */
    public boolean writes() {
        return mode == Mode.WRITE;
    }
}
