package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;

/** Charges the relative minor chord in place of a major chord: it shares two of its notes. */
public final class RelativeMinor implements LeftHandRule {

    @Override
    public String id() {
        return "relative-minor";
    }

    @Override
    public String summary() {
        return "The relative minor chord in place of a major chord.";
    }

    @Override
    public List<String> cases() {
        return BeatCase.NAMES;
    }

    @Override
    public int points(Moment moment, LeftHandPlay play, LeftHandFit fit, Points points) {
        return fit == LeftHandFit.RELATIVE_MINOR ? points.of(BeatCase.of(moment, play)) : 0;
    }
}
