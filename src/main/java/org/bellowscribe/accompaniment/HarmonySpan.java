package org.bellowscribe.accompaniment;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;

/**
 * A stretch of a tune under one harmony: a whole measure, or half of one where its time can be halved.
 *
 * @param measure 0-based index of the measure
 * @param onset time from the start of that measure
 * @param length how long it lasts, more than 0
 */
record HarmonySpan(int measure, Fraction onset, Fraction length) {

    private static final Fraction HALF = Fraction.of(1, 2);

    /** Returns the spans of a tune in score order; every moment of every written measure lies in exactly one. */
    static List<HarmonySpan> of(Tune tune) {
        List<HarmonySpan> spans = new ArrayList<>();
        for (Measure measure : tune.measures()) {
            Fraction half = measure.time().measureLength().times(HALF);
            Fraction cut = half.minus(measure.beatOffset());
            if (isHalved(measure) && cut.isPositive() && cut.compareTo(measure.length()) < 0) {
                spans.add(new HarmonySpan(measure.index(), Fraction.ZERO, cut));
                spans.add(new HarmonySpan(measure.index(), cut, measure.length().minus(cut)));
            } else if (measure.length().isPositive()) {
                spans.add(new HarmonySpan(measure.index(), Fraction.ZERO, measure.length()));
            }
        }
        return spans;
    }

    // A waltz has one harmony a measure, and so has the slip jig; 2/4, 4/4 and 6/8 fall into halves.
    private static boolean isHalved(Measure measure) {
        double pulses = measure.time().measureLength().toDouble()
                / measure.time().pulse().toDouble();
        return Math.round(pulses) % 2 == 0;
    }

    /** Returns the time at which it ends, from the start of its measure. */
    Fraction end() {
        return onset.plus(length);
    }
}
