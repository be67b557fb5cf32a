package org.bellowscribe.solver;

import org.bellowscribe.score.Event;

/**
 * An event as the rules see it.
 *
 * @param event the event
 * @param seconds how long it sounds
 * @param closing true for the note on which a section of the tune closes, and for the last note
 */
public record Moment(Event event, double seconds, boolean closing) {

    /** Returns true if nothing sounds. */
    public boolean isRest() {
        return event.isRest();
    }

    /** Returns how much time it leaves. */
    public Pace pace() {
        return Pace.of(seconds);
    }
}
