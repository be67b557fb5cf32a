package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;

/** Charges a chord in place of a bass of the same root, or a bass in place of a chord. */
public final class OtherKind implements LeftHandRule {

    @Override
    public String id() {
        return "other-kind";
    }

    @Override
    public String summary() {
        return "A chord for a bass, or a bass for a chord, of the same root.";
    }

    @Override
    public List<String> cases() {
        return BeatCase.NAMES;
    }

    @Override
    public int points(Moment moment, LeftHandPlay play, LeftHandFit fit, Points points) {
        return fit == LeftHandFit.OTHER_KIND ? points.of(BeatCase.of(moment, play)) : 0;
    }
}
