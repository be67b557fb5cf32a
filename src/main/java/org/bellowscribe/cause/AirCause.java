package org.bellowscribe.cause;

import org.bellowscribe.replay.WithoutAir;
import org.bellowscribe.solver.explain.Explanation;
import org.jspecify.annotations.Nullable;

/**
 * Why the air button is pressed at an event: what would be without that press, on every pass, with everything else played as
 * marked and as loud as marked.
 *
 * @param event 0-based index of the event
 * @param moved by how much the press opens the bellows each time, in RU.s; closes them if negative
 * @param runsOut where the bellows would be at their end; null if nowhere in {@link #PLAYINGS} playings
 * @param instead what the tune would cost without the press, all else decided anew; null where what the bellows would do says
 *     enough
 * @param text the same in words, one sentence or two
 */
public record AirCause(
        int event, double moved, @Nullable RunsOut runsOut, Explanation.@Nullable Candidate instead, String text) {

    /** So many playings of the tune, one after the other, are looked at. */
    public static final int PLAYINGS = 20;

    /**
     * Where the bellows would be at their end, but for what is kept in reserve.
     *
     * @param end at which
     * @param event 0-based index of the event during which
     * @param pass which playing of that event in one playing of the tune this is, from 1
     * @param playing which playing of the whole tune this is, from 1, if it is played again and again
     */
    public record RunsOut(WithoutAir.End end, int event, int pass, int playing) {}
}
