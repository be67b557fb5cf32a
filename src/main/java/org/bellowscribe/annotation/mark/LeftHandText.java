package org.bellowscribe.annotation.mark;

import java.util.List;
import org.bellowscribe.annotation.style.LeftHandLabels;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.theory.Fraction;

/** Writes the sounds of the left hand that fall within one note, one after the other. */
final class LeftHandText {

    private final LeftHandLabels labels;
    private final StringBuilder text = new StringBuilder();
    private Fraction last = Fraction.ZERO;

    LeftHandText(LeftHandLabels labels) {
        this.labels = labels;
    }

    /**
     * Adds what sounds.
     *
     * @param start time from the start of the note that carries the text to the start of the event
     * @param plays what the left hand does during the event, in order of time
     */
    void add(Fraction start, List<LeftHandPlay> plays) {
        for (LeftHandPlay play : plays) {
            LeftHandSound sound = play.sound();
            if (sound != null) {
                add(start.plus(play.wanted().offset()), sound);
            }
        }
    }

    /** A sound that begins later than the note has a separator before it, also the first one. */
    private void add(Fraction time, LeftHandSound sound) {
        if (!time.equals(last)) {
            text.append(labels.then());
        } else if (!text.isEmpty()) {
            text.append(labels.together());
        }
        text.append(labels.label(sound));
        last = time;
    }

    /** Returns the text; empty if nothing sounds. */
    @Override
    public String toString() {
        return text.toString();
    }
}
