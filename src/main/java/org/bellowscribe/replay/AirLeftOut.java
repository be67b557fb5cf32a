package org.bellowscribe.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.bellowscribe.instrument.Bellows;

/**
 * Leaves the air button alone at some steps and plays everything else just as marked, as loud as marked.
 *
 * @param performance one playing of the tune
 * @param bellows the limits of the bellows
 * @param leftOut tells of a step whether the air button is left alone
 */
public record AirLeftOut(List<Sounding> performance, Bellows bellows, IntPredicate leftOut) {

    // Far less than a thousandth, in which openings are decided.
    private static final double NOTHING = 1e-6;

    /** Copies the list. */
    public AirLeftOut {
        performance = List.copyOf(performance);
    }

    /**
     * Follows the bellows until they may be used no further.
     *
     * @param from place in the performance from which on to follow them
     * @param opening opening there, in RU.s
     */
    public WithoutAir follow(int from, double opening) {
        List<Double> openings = new ArrayList<>();
        double at = opening;
        for (Sounding sounding : performance.subList(from, performance.size())) {
            at += sounding.openingAfter() - sounding.openingBefore();
            at -= leftOut.test(sounding.step()) ? sounding.airMoved() : 0;
            openings.add(at);
            if (at < bellows.lowest() - NOTHING || at > bellows.highest() + NOTHING) {
                WithoutAir.End end = at < bellows.lowest() ? WithoutAir.End.CLOSED : WithoutAir.End.WIDE_OPEN;
                return new WithoutAir(from, openings, end);
            }
        }
        return new WithoutAir(from, openings, WithoutAir.End.LASTS);
    }
}
