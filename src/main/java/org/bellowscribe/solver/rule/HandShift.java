package org.bellowscribe.solver.rule;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Pace;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Points;

/** Charges every move of the hand along the rows: a place of the hand that holds is worth a lot. To lean half a button lower, or
 * back, takes little. */
public final class HandShift implements PairRule {

    private static final String PER_BUTTON = "per-button";
    private static final String BESIDE_REST = "beside-rest";
    private static final String LEAN = "lean";

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
        cases.add(LEAN);
        return cases;
    }

    @Override
    public int points(Moment before, Choice from, Moment after, Choice to, Points points) {
        int halves = Math.abs(from.halves() - to.halves());
        if (halves == 0) {
            return 0;
        }
        if (before.isRest() || after.isRest()) {
            return points.of(BESIDE_REST);
        }
        return halves == 1 ? points.of(LEAN) : points.of(before.pace()) + halves / 2 * points.of(PER_BUTTON);
    }
}
