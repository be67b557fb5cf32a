package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;

/** Charges a sound of another harmony that has the melody note over it: better than silence, worse than a kin. */
public final class WithMelody implements LeftHandRule {

    @Override
    public String id() {
        return "with-melody";
    }

    @Override
    public String summary() {
        return "A sound of another harmony, but one that has the melody note in it.";
    }

    @Override
    public List<String> cases() {
        return BeatCase.NAMES;
    }

    @Override
    public int points(Moment moment, LeftHandPlay play, LeftHandFit fit, Points points) {
        return fit == LeftHandFit.WITH_MELODY ? points.of(BeatCase.of(moment, play)) : 0;
    }
}
