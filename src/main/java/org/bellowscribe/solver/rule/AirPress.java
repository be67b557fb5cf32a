package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.solver.AirRule;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;

/**
 * Charges pressing the air button: the thumb needs time and the note gets softer (S32, tekyinblack.com "The Idea"); in a
 * rest it is nearly free. Full air on a short note is a gulp that no player takes (common practice, no source).
 */
public final class AirPress implements AirRule {

    private static final double LONG_NOTE = 0.4;
    private static final double SHORT_NOTE = 0.2;
    private static final String LONG = "long-note";
    private static final String MEDIUM = "medium-note";
    private static final String SHORT = "short-note";
    private static final String REST = "rest";
    private static final String FULL = "full";
    private static final String FULL_SHORT = "full-short-note";

    @Override
    public String id() {
        return "air-press";
    }

    @Override
    public String summary() {
        return "Pressing the air button costs by the length of the note, a little in a rest, and more if pressed fully.";
    }

    @Override
    public List<String> cases() {
        return List.of(LONG, MEDIUM, SHORT, REST, FULL, FULL_SHORT);
    }

    @Override
    public int points(Moment moment, AirUse air, Points points) {
        if (air == AirUse.NONE) {
            return 0;
        }
        String length = moment.seconds() >= LONG_NOTE ? LONG : moment.seconds() >= SHORT_NOTE ? MEDIUM : SHORT;
        boolean enough = moment.isRest() || moment.seconds() >= LONG_NOTE;
        return points.of(moment.isRest() ? REST : length)
                + (air == AirUse.FULL ? points.of(enough ? FULL : FULL_SHORT) : 0);
    }
}
