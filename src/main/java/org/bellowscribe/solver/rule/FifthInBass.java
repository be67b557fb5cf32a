package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;

/** Charges the bass a fifth above the root. */
public final class FifthInBass implements LeftHandRule {

    @Override
    public String id() {
        return "fifth-in-bass";
    }

    @Override
    public String summary() {
        return "The bass a fifth above the root: at home under a passing note, wrong under the first beat.";
    }

    @Override
    public List<String> cases() {
        return BeatCase.NAMES;
    }

    @Override
    public int points(Moment moment, LeftHandPlay play, LeftHandFit fit, Points points) {
        return fit == LeftHandFit.FIFTH ? points.of(BeatCase.of(moment, play)) : 0;
    }
}
