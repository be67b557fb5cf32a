package org.bellowscribe.batch;

import java.nio.file.Path;
import org.bellowscribe.marking.LeftHandChoice;
import org.jspecify.annotations.Nullable;

/**
 * What a run that marks reads and writes beside the scores.
 *
 * @param pins where the pins of the one tune are; null for those beside each score
 * @param score false if no marked score is to be written
 * @param record true if every decision is to be written beside the score, as data
 * @param leftHand what to write out of the left hand
 * @param report where pages to look at go; null if none are wanted
 */
public record Outputs(
        @Nullable Path pins,
        boolean score,
        boolean record,
        LeftHandChoice leftHand,
        @Nullable ReportFolder report) {

    /** The marked score alone. */
    public static final Outputs SCORE = new Outputs(null, true, false, LeftHandChoice.NONE, null);

    /** Returns the same with a report. */
    public Outputs with(@Nullable ReportFolder folder) {
        return new Outputs(pins, score, record, leftHand, folder);
    }
}
