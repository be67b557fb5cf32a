package org.bellowscribe.accompaniment;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.theory.Fraction;

/**
 * The usual pattern of the left hand in a metre, one stroke on each pulse: bass and chord in turn in 2/4, 4/4 and 2/2
 * (published: S7 "Big Nick", box lesson 6; accordionlifeacademy.com), bass, chord, chord in three-time (the same and S18
 * "Bellows and Strings"), bass on the first and chord on the second dotted beat in 6/8 (published: W027,
 * tunes2play4fun.com, "I'se the B'y").
 */
final class MetrePattern {

    /** A stroke: when after the bar line, for how long, and what. */
    record Stroke(Fraction onset, Fraction duration, LeftHandKind kind) {}

    private static final Fraction HALF = Fraction.of(1, 2);

    private MetrePattern() {}

    /** Returns the strokes of a full measure. */
    static List<Stroke> strokes(TimeSignature time) {
        Fraction pulse = stroke(time);
        boolean threes = pulses(time, pulse) % 3 == 0;
        List<Stroke> strokes = new ArrayList<>();
        Fraction at = Fraction.ZERO;
        for (int i = 0; at.compareTo(time.measureLength()) < 0; i++) {
            boolean bass = i % (threes ? 3 : 2) == 0;
            strokes.add(new Stroke(at, pulse.times(HALF), bass ? LeftHandKind.BASS : LeftHandKind.CHORD));
            at = at.plus(pulse);
        }
        return strokes;
    }

    // In 2/2 and 3/2 the left hand plays on each quarter, as in 4/4.
    private static Fraction stroke(TimeSignature time) {
        Fraction pulse = time.pulse();
        return pulse.compareTo(Fraction.of(2, 1)) >= 0 && time.beatType() <= 2 ? Fraction.QUARTER : pulse;
    }

    private static int pulses(TimeSignature time, Fraction pulse) {
        return (int) Math.round(time.measureLength().toDouble() / pulse.toDouble());
    }
}
