package org.bellowscribe.solver.rule;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Hand;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Pace;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Points;

/**
 * Charges going from one row to another, or to a note group that lies over other rows: playing along the row keeps the
 * fingers in order. Of two hands each has a row of its own.
 */
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
        for (Hand hand : Hand.values()) {
            Set<Integer> last = rows(from, hand);
            Set<Integer> next = rows(to, hand);
            if (!last.isEmpty() && !next.isEmpty() && !last.equals(next)) {
                return points.of(before.pace());
            }
        }
        return 0;
    }

    private static Set<Integer> rows(Choice choice, Hand hand) {
        Set<Integer> rows = new HashSet<>();
        for (Button button : choice.buttons()) {
            if (button.hand() == hand) {
                rows.add(button.row());
            }
        }
        return rows;
    }
}
