package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;

/** Charges a wanted left-hand sound that stays silent. */
public final class LeftHandSilent implements LeftHandRule {

    @Override
    public String id() {
        return "left-hand-silent";
    }

    @Override
    public String summary() {
        return "A wanted left-hand sound that stays silent is the last resort.";
    }

    @Override
    public List<String> cases() {
        return BeatCase.NAMES;
    }

    @Override
    public int points(Moment moment, LeftHandPlay play, LeftHandFit fit, Points points) {
        return fit == LeftHandFit.SILENT ? points.of(BeatCase.of(moment, play)) : 0;
    }
}
