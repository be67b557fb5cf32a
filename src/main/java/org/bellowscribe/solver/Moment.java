package org.bellowscribe.solver;

import java.util.Set;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.score.Event;

/**
 * An event as the rules see it.
 *
 * @param event the event
 * @param seconds how long it sounds
 * @param closing true for the note on which a section of the tune closes, and for the last note
 * @param homeRow the row of the instrument that is home in the key of its measure, from 1, or {@link #NO_ROW}
 * @param lowest true for the lowest note of the tune, wherever it comes, and its upper neighbor
 * @param chordWays the directions in which the left hand has the harmony that holds then; both where none does
 * @param onBeat true if it begins on a beat
 */
public record Moment(
        Event event,
        double seconds,
        boolean closing,
        int homeRow,
        boolean lowest,
        Set<BellowsDirection> chordWays,
        boolean onBeat) {

    /** No row is home. */
    public static final int NO_ROW = 0;

    /** Creates the moment of an event by itself, on a beat where no row is home. */
    public Moment(Event event, double seconds, boolean closing) {
        this(event, seconds, closing, NO_ROW, false);
    }

    /** Creates a moment on a beat at which no harmony holds. */
    public Moment(Event event, double seconds, boolean closing, int homeRow, boolean lowest) {
        this(event, seconds, closing, homeRow, lowest, Set.of(BellowsDirection.values()), true);
    }

    /** Copies the set. */
    public Moment {
        chordWays = Set.copyOf(chordWays);
    }

    /** Returns true if nothing sounds. */
    public boolean isRest() {
        return event.isRest();
    }

    /** Returns how much time it leaves. */
    public Pace pace() {
        return Pace.of(seconds);
    }
}
