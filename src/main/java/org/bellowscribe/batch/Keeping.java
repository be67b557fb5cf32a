package org.bellowscribe.batch;

import org.bellowscribe.batch.ledger.Ledger;
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

    /** Tells whether results are written. */
    public boolean writes() {
        return mode == Mode.WRITE;
    }
}
