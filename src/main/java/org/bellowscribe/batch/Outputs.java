package org.bellowscribe.batch;

import java.nio.file.Path;
import org.bellowscribe.difficulty.grading.Grading;
import org.bellowscribe.difficulty.grading.GradingLibrary;
import org.bellowscribe.marking.LeftHandChoice;
import org.jspecify.annotations.Nullable;

/**
 * What a run that marks reads and writes beside the scores.
 *
 * @param pins where the pins of the one tune are; null for those beside each score
 * @param score false if no marked score is to be written
 * @param record true if every decision is to be written beside the score, as data
 * @param words true if the tune is to be written in words beside the score
 * @param difficulty true if the table of difficulty is to be told
 * @param grading how difficulty is weighed, there and in the record
 * @param leftHand what to write out of the left hand
 */
public record Outputs(@Nullable Path pins, boolean score, boolean record, boolean words, boolean difficulty, Grading grading, LeftHandChoice leftHand) {

    /** The marked score alone. */
    public static final Outputs SCORE = new Outputs(null, true, false, false, false, GradingLibrary.usual(), LeftHandChoice.NONE);
}
