package org.bellowscribe.batch;

import org.bellowscribe.difficulty.grading.Grading;
import org.bellowscribe.difficulty.grading.GradingLibrary;

/**
 * How tunes are graded.
 *
 * @param told true if the table of difficulty is told under each tune
 * @param grading how difficulty is weighed, there and in the record
 */
public record Grades(boolean told, Grading grading) {

    /** As usual, and only in the record. */
    public static final Grades USUAL = new Grades(false, GradingLibrary.usual());
}
