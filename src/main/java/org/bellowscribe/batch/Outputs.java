package org.bellowscribe.batch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.marking.LeftHandChoice;
import org.bellowscribe.marking.StageChoice;
import org.jspecify.annotations.Nullable;

/**
 * What a run that marks reads and writes beside the scores.
 *
 * @param pins where the pins of the one tune are; null for those beside each score
 * @param score false if no marked score is to be written
 * @param record true if every decision is to be written beside the score, as data
 * @param grades how tunes are graded
 * @param leftHand what to write out of the left hand
 * @param stages which stages to write
 * @param beside what else to write beside each marked score, in this order
 * @param report where pages to look at go; null if none are wanted
 */
public record Outputs(
        @Nullable Path pins,
        boolean score,
        boolean record,
        Grades grades,
        LeftHandChoice leftHand,
        StageChoice stages,
        List<Beside> beside,
        @Nullable ReportFolder report) {

    /** The marked score alone. */
    public static final Outputs SCORE =
            new Outputs(null, true, false, Grades.USUAL, LeftHandChoice.NONE, StageChoice.NONE, List.of(), null);

    /** Copies the list. */
    public Outputs {
        beside = List.copyOf(beside);
    }

    /** Returns how the names of all files end that may be written beside a marked score. */
    public List<String> endings() {
        List<String> endings = new ArrayList<>();
        if (record) {
            endings.add(Source.RECORD);
        }
        if (leftHand.sheet()) {
            endings.add(LeftHandChoice.SHEET);
        }
        beside.forEach(each -> endings.add(each.ending()));
        endings.addAll(stages.endings());
        return endings;
    }

    /** Returns the same with or without records. */
    public Outputs withRecord(boolean wanted) {
        return new Outputs(pins, score, wanted, grades, leftHand, stages, beside, report);
    }

    /** Returns the same with a report, or with none. */
    public Outputs with(@Nullable ReportFolder folder) {
        return new Outputs(pins, score, record, grades, leftHand, stages, beside, folder);
    }

    /** Returns the same with another choice for the left hand. */
    public Outputs withLeftHand(LeftHandChoice choice) {
        return new Outputs(pins, score, record, grades, choice, stages, beside, report);
    }
}
