package org.bellowscribe.batch;

import java.util.List;
import org.bellowscribe.accompaniment.PatternChoice;
import org.bellowscribe.accompaniment.pattern.PatternLibrary;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.solver.SolverOptions;
import org.jspecify.annotations.Nullable;

/**
 * How to mark tunes; the same for a whole batch.
 *
 * @param instrument the pupil's instrument
 * @param style labels and signs
 * @param marks ids of the marks to write
 * @param solver how to decide
 * @param key in which key to play them
 * @param reading which line of a score is the melody
 * @param patterns which patterns the left hand plays
 * @param leftHandPart id, name or place from 1 of a part that has the left hand written out; null if patterns decide
 * @param record true if every decision is to be written beside the score, as data
 * @param steering what a teacher fixes and asks
 */
public record MarkSettings(
        Instrument instrument,
        Style style,
        List<String> marks,
        SolverOptions solver,
        KeyChoice key,
        ReadingOptions reading,
        PatternChoice patterns,
        @Nullable String leftHandPart,
        boolean record,
        Steering steering) {

    /** Id of the marks that show where the air button is pressed. */
    public static final String AIR = "air";

    /** Id of the marks that show what the left hand plays. */
    public static final String LEFT_HAND = "left-hand";

    /** Copies the list. */
    public MarkSettings {
        marks = List.copyOf(marks);
    }

    /** Creates settings with the patterns of the manner of playing, and nothing fixed but what stands beside the scores. */
    public MarkSettings(
            Instrument instrument,
            Style style,
            List<String> marks,
            SolverOptions solver,
            KeyChoice key,
            ReadingOptions reading,
            boolean record) {
        this(
                instrument,
                style,
                marks,
                solver,
                key,
                reading,
                PatternLibrary.usual().inManner(solver.manner().patterns()),
                null,
                record,
                Steering.USUAL);
    }

    /** Returns these settings with other patterns of the left hand. */
    public MarkSettings with(PatternChoice others) {
        return new MarkSettings(instrument, style, marks, solver, key, reading, others, leftHandPart, record, steering);
    }

    /** Returns these settings with what a teacher fixes and asks. */
    public MarkSettings with(Steering other) {
        return new MarkSettings(instrument, style, marks, solver, key, reading, patterns, leftHandPart, record, other);
    }

    /** Returns these settings with the left hand of a part of the score; null if patterns decide. */
    public MarkSettings withLeftHandOf(@Nullable String part) {
        return new MarkSettings(instrument, style, marks, solver, key, reading, patterns, part, record, steering);
    }
}
