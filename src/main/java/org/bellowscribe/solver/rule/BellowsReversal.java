package org.bellowscribe.solver.rule;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Pace;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Points;

/** Charges every change of bellows direction; the less time there is, the more. */
public final class BellowsReversal implements PairRule {

    private static final String AFTER_REST = "after-rest";

    @Override
    public String id() {
        return "bellows-reversal";
    }

    @Override
    public String summary() {
        return "A change between push and pull needs time.";
    }

    @Override
    public List<String> cases() {
        List<String> cases = new ArrayList<>(Pace.CASES);
        cases.add(AFTER_REST);
        return cases;
    }

    @Override
    public int points(Moment before, Choice from, Moment after, Choice to, Points points) {
        if (from.direction() == to.direction()) {
            return 0;
        }
        return before.isRest() ? points.of(AFTER_REST) : points.of(before.pace());
    }
}
