package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;

/** Charges the relative major chord in place of a minor chord: it shares two of its notes. */
public final class RelativeChord implements LeftHandRule {

    @Override
    public String id() {
        return "relative-chord";
    }

    @Override
    public String summary() {
        return "The relative major chord in place of a minor chord.";
    }

    @Override
    public List<String> cases() {
        return BeatCase.NAMES;
    }

    @Override
    public int points(Moment moment, LeftHandPlay play, LeftHandFit fit, Points points) {
        return fit == LeftHandFit.RELATIVE ? points.of(BeatCase.of(moment, play)) : 0;
    }
}
