package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.solver.AirRule;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;

/**
 * Charges pressing the air button: the thumb needs time and the note gets softer (S32, tekyinblack.com "The Idea"); in a
 * rest it is nearly free, and on a note that is held there is all the time one could want. The thumb goes with a stroke of
 * its hand, so a note that passes between two beats is the last to take air. Full air on a short note is a gulp that no
 * player takes (common practice, no source).
 */
public final class AirPress implements AirRule {

    // Anything from 0.6 to 0.95 s gives the same marks on sixteen shared tunes.
    private static final double HELD_NOTE = 0.75;
    private static final double LONG_NOTE = 0.4;
    private static final double SHORT_NOTE = 0.2;
    private static final String HELD = "held-note";
    private static final String LONG = "long-note";
    private static final String MEDIUM = "medium-note";
    private static final String SHORT = "short-note";
    private static final String OFF_BEAT = "off-beat";
    private static final String REST = "rest";
    private static final String FULL = "full";
    private static final String FULL_SHORT = "full-short-note";

    @Override
    public String id() {
        return "air-press";
    }

    @Override
    public String summary() {
        return "Pressing the air button costs by the length of the note, more off the beat and if pressed fully, a little in a rest.";
    }

    @Override
    public List<String> cases() {
        return List.of(HELD, LONG, MEDIUM, SHORT, OFF_BEAT, REST, FULL, FULL_SHORT);
    }

    @Override
    public int points(Moment moment, AirUse air, Points points) {
        if (air == AirUse.NONE) {
            return 0;
        }
        boolean enough = moment.isRest() || moment.seconds() >= LONG_NOTE;
        return (moment.isRest() ? points.of(REST) : note(moment, points))
                + (air == AirUse.FULL ? points.of(enough ? FULL : FULL_SHORT) : 0);
    }

    private static int note(Moment moment, Points points) {
        if (moment.seconds() >= LONG_NOTE) {
            return points.of(moment.seconds() >= HELD_NOTE ? HELD : LONG);
        }
        return points.of(moment.seconds() >= SHORT_NOTE ? MEDIUM : SHORT) + (moment.onBeat() ? 0 : points.of(OFF_BEAT));
    }
}
