package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Pace;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Points;

/** Charges going from one row to another: playing along the row keeps the fingers in order. */
public final class RowChange implements PairRule {

    @Override
    public String id() {
        return "row-change";
    }

    @Override
    public String summary() {
        return "Going over to another row costs by the time there is.";
    }

    @Override
    public List<String> cases() {
        return Pace.CASES;
    }

    @Override
    public int points(Moment before, Choice from, Moment after, Choice to, Points points) {
        if (before.isRest() || after.isRest()) {
            return 0;
        }
        boolean same = from.buttons().get(0).row() == to.buttons().get(0).row();
        return same ? 0 : points.of(before.pace());
    }
}
