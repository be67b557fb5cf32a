package org.bellowscribe.batch;

import org.bellowscribe.difficulty.grading.Grading;
import org.bellowscribe.difficulty.grading.GradingLibrary;
import org.jspecify.annotations.Nullable;

/**
 * How tunes are graded.
 *
 * @param told true if the table of difficulty is told under each tune
 * @param named how difficulty is weighed, there and in the record; null for the usual way
 */
public record Grades(boolean told, @Nullable Grading named) {

    /** As usual, and only in the record. */
    public static final Grades USUAL = new Grades(false, null);

    /** Returns how difficulty is weighed. */
    public Grading grading() {
        // Most runs never ask: its file is not read before.
        return named == null ? GradingLibrary.usual() : named;
    }
}
