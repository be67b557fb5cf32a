package org.bellowscribe.solver.rule;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Pace;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Points;

/** Charges every move of the hand along the rows: a place of the hand that holds is worth a lot. */
public final class HandShift implements PairRule {

    private static final String PER_BUTTON = "per-button";
    private static final String BESIDE_REST = "beside-rest";

    @Override
    public String id() {
        return "hand-shift";
    }

    @Override
    public String summary() {
        return "Moving the hand along the rows costs by the time there is and by the way.";
    }

    @Override
    public List<String> cases() {
        List<String> cases = new ArrayList<>(Pace.CASES);
        cases.add(PER_BUTTON);
        cases.add(BESIDE_REST);
        return cases;
    }

    @Override
    public int points(Moment before, Choice from, Moment after, Choice to, Points points) {
        int way = Math.abs(from.handOn() - to.handOn());
        if (way == 0) {
            return 0;
        }
        if (before.isRest() || after.isRest()) {
            return points.of(BESIDE_REST);
        }
        return points.of(before.pace()) + way * points.of(PER_BUTTON);
    }
}
