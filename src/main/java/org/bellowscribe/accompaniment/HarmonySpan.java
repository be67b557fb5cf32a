package org.bellowscribe.accompaniment;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;

/**
 * A stretch of a tune under one harmony: a measure, half of one where its time can be halved, or a pulse or two of compound time.
 *
 * @param measure 0-based index of the measure
 * @param onset time from the start of that measure
 * @param length how long it lasts, more than 0
 */
record HarmonySpan(int measure, Fraction onset, Fraction length) {

    /** Returns the spans of a tune in score order; every moment of every written measure lies in exactly one. */
    static List<HarmonySpan> of(Tune tune) {
        List<HarmonySpan> spans = new ArrayList<>();
        for (Measure measure : tune.measures()) {
            Fraction from = Fraction.ZERO;
            for (Fraction cut : cuts(measure.time())) {
                Fraction to = Fraction.min(cut.minus(measure.beatOffset()), measure.length());
                if (to.compareTo(from) > 0) {
                    spans.add(new HarmonySpan(measure.index(), from, to.minus(from)));
                    from = to;
                }
            }
            if (measure.length().compareTo(from) > 0) {
                spans.add(
                        new HarmonySpan(measure.index(), from, measure.length().minus(from)));
            }
        }
        return spans;
    }

    // Where within a full measure the harmony may change. A waltz has one harmony a measure; 2/4, 4/4 and 6/8 fall into
    // halves, 3/2 into three, 12/8 is two measures of 6/8, and the slip jig may change on its third pulse (common
    // practice, no source).
    private static List<Fraction> cuts(TimeSignature time) {
        int pulses =
                (int) Math.round(time.measureLength().toDouble() / time.pulse().toDouble());
        if (time.isCompound()) {
            return IntStream.range(1, pulses)
                    .filter(pulse -> pulses != 3 || pulse == 2)
                    .mapToObj(pulse -> time.pulse().times(Fraction.of(pulse, 1)))
                    .toList();
        }
        if (pulses == 3 && time.beatType() == 2) {
            return List.of(time.pulse(), time.pulse().times(Fraction.of(2, 1)));
        }
        return pulses % 2 == 0 ? List.of(time.measureLength().times(Fraction.of(1, 2))) : List.of();
    }

    /** Returns how much of a bar it fills: of a measure, or of two pulses in compound time. */
    double share(Measure at) {
        return length.toDouble() / bar(at.time());
    }

    /** Returns true if it begins within a bar. */
    boolean isWithin(Measure at) {
        double bars = onset.plus(at.beatOffset()).toDouble() / bar(at.time());
        return onset.isPositive() && Math.abs(bars - Math.rint(bars)) > 1e-9;
    }

    private static double bar(TimeSignature time) {
        return time.isCompound()
                ? 2 * time.pulse().toDouble()
                : time.measureLength().toDouble();
    }

    /** Returns the time at which it ends, from the start of its measure. */
    Fraction end() {
        return onset.plus(length);
    }
}
