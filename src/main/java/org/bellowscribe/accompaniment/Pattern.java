package org.bellowscribe.accompaniment;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.score.Tempo;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/**
 * A pattern of the left hand.
 *
 * @param id id in kebab-case
 * @param summary one sentence for people
 * @param use when it is taken if nobody names a pattern, or null for never
 * @param beats after so many beats it begins anew within the measure; 0 if only at the bar line
 * @param strokes what is played, in order of time
 */
public record Pattern(String id, String summary, @Nullable Use use, int beats, List<Beat> strokes) {

    /** Copies the strokes. */
    public Pattern {
        strokes = List.copyOf(strokes);
    }

    /**
     * When a pattern is taken.
     *
     * @param beats for measures of so many beats and of its multiples
     * @param fromTempo beats a minute from which it is taken; 0 for always
     */
    public record Use(int beats, int fromTempo) {}

    /**
     * A stroke of a pattern.
     *
     * @param onset beats since its start, 0 or more
     * @param length in beats, more than 0
     * @param kind bass or chord
     * @param tone which note of the harmony a bass sounds
     */
    public record Beat(Fraction onset, Fraction length, LeftHandKind kind, ChordTone tone) {}

    /**
     * A stroke in a measure.
     *
     * @param onset quarters after the bar line
     * @param duration quarters
     * @param kind bass or chord
     * @param tone which note of the harmony a bass sounds
     */
    public record Stroke(Fraction onset, Fraction duration, LeftHandKind kind, ChordTone tone) {}

    /** Returns true if this pattern is meant for a measure of that time where nobody names one. */
    boolean suits(TimeSignature time, Tempo tempo) {
        if (use == null) {
            return false;
        }
        double minute = tempo.quartersPerMinute() / beat(time).toDouble();
        return beats(time) % use.beats() == 0 && !fallsBetweenHalves(time) && minute >= use.fromTempo();
    }

    // 3/2 has three beats of two quarters, not two of three: what goes in threes would put its bass between them.
    private boolean fallsBetweenHalves(TimeSignature time) {
        return time.beatType() == 2 && beats > 1 && beats % 2 == 1;
    }

    /** Returns the strokes of a full measure, in order of time. */
    public List<Stroke> strokes(TimeSignature time) {
        List<Stroke> all = new ArrayList<>();
        Fraction beat = beat(time);
        Fraction end = time.measureLength();
        Fraction cell = beats == 0 ? end : beat.times(Fraction.of(beats, 1));
        for (Fraction start = Fraction.ZERO; start.compareTo(end) < 0; start = start.plus(cell)) {
            for (Beat stroke : strokes) {
                Fraction onset = start.plus(stroke.onset().times(beat));
                if (onset.compareTo(end) < 0) {
                    Fraction length = Fraction.min(stroke.length().times(beat), end.minus(onset));
                    all.add(new Stroke(onset, length, stroke.kind(), stroke.tone()));
                }
            }
        }
        return all;
    }

    // The left hand counts quarters in 2/2 and 3/2 too, and three eighths in compound time.
    private static Fraction beat(TimeSignature time) {
        return time.beatType() <= 2 ? Fraction.QUARTER : time.pulse();
    }

    private static int beats(TimeSignature time) {
        return (int) Math.round(time.measureLength().toDouble() / beat(time).toDouble());
    }
}
