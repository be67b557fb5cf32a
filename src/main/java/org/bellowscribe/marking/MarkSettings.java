package org.bellowscribe.marking;

import java.util.List;
import org.bellowscribe.accompaniment.PatternChoice;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.accompaniment.pattern.PatternLibrary;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Task;
import org.jspecify.annotations.Nullable;

/**
 * How to mark tunes; the same for a whole batch.
 *
 * @param instrument the pupil's instrument
 * @param style labels and signs
 * @param marks ids of the marks to print
 * @param played what is played
 * @param solver how to decide
 * @param key in which key to play them
 * @param reading which line of a score is the melody
 * @param patterns which patterns the left hand plays
 * @param leftHandPart id, name or place from 1 of a part that has the left hand written out; null if patterns decide
 * @param steering what a teacher fixes and asks
 */
public record MarkSettings(
        Instrument instrument,
        Style style,
        List<String> marks,
        Played played,
        SolverOptions solver,
        KeyChoice key,
        ReadingOptions reading,
        PatternChoice patterns,
        @Nullable String leftHandPart,
        Steering steering) {

    /** Copies the list, and leaves the air button alone if it is not played. */
    public MarkSettings {
        marks = List.copyOf(marks);
        solver = solver.withAirButton(solver.airButton() && played.air());
    }

    /** Creates settings with the patterns of the manner of playing, and nothing fixed but what stands beside the scores. */
    public MarkSettings(
            Instrument instrument,
            Style style,
            List<String> marks,
            Played played,
            SolverOptions solver,
            KeyChoice key,
            ReadingOptions reading) {
        this(
                instrument,
                style,
                marks,
                played,
                solver,
                key,
                reading,
                PatternLibrary.usual().inManner(solver.manner().patterns()),
                null,
                Steering.USUAL);
    }

    /** Returns these settings with other patterns of the left hand. */
    public MarkSettings with(PatternChoice others) {
        return new MarkSettings(instrument, style, marks, played, solver, key, reading, others, leftHandPart, steering);
    }

    /** Returns these settings with what a teacher fixes and asks. */
    public MarkSettings with(Steering other) {
        return new MarkSettings(instrument, style, marks, played, solver, key, reading, patterns, leftHandPart, other);
    }

    /** Returns these settings with the left hand of a part of the score; null if patterns decide. */
    public MarkSettings withLeftHandOf(@Nullable String part) {
        return new MarkSettings(instrument, style, marks, played, solver, key, reading, patterns, part, steering);
    }

    /**
     * Returns what is to be decided about a tune, with nothing fixed.
     *
     * @param tune the tune as it sounds
     * @param moved semitones by which it was moved
     * @param leftHand what the left hand should sound
     */
    Task task(Tune tune, int moved, List<WantedSound> leftHand) {
        return new Task(tune, instrument, leftHand, solver, moved);
    }
}
