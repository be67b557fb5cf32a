package org.bellowscribe.sound;

import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Fraction;

/**
 * Musical times as whole ticks.
 *
 * @param perQuarter ticks a quarter note, as many as make every time of the tune whole; where that would be more than a file
 *     can say, a number with many divisors, and times are rounded
 */
record Ticks(int perQuarter) {

    private static final int LEAST = 96;
    // The largest that a file can say is 32767.
    private static final int MANY_DIVISORS = 27_720;
    private static final int MOST = 32_767;

    static Ticks of(DecidedTune tune) {
        long common = LEAST;
        for (Step step : tune.solution().steps()) {
            Event event = step.event();
            common = multiple(multiple(common, event.onset()), event.duration());
            for (LeftHandPlay play : step.leftHand()) {
                common = multiple(
                        multiple(common, play.wanted().offset()), play.wanted().duration());
            }
            if (common > MOST) {
                return new Ticks(MANY_DIVISORS);
            }
        }
        return new Ticks((int) common);
    }

    private static long multiple(long common, Fraction time) {
        long a = common;
        long b = time.denominator();
        while (b > 0) {
            long rest = a % b;
            a = b;
            b = rest;
        }
        return common > MOST ? common : common / a * time.denominator();
    }

    /** Returns the nearest tick. */
    long of(Fraction quarters) {
        return Math.round(quarters.toDouble() * perQuarter);
    }
}
