package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Hand;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Pace;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Points;
import org.jspecify.annotations.Nullable;

/**
 * Charges going from one row to another: playing along the row keeps the fingers in order. Of two hands each has a row
 * of its own.
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
            Button last = first(from, hand);
            Button next = first(to, hand);
            if (last != null && next != null && last.row() != next.row()) {
                return points.of(before.pace());
            }
        }
        return 0;
    }

    private static @Nullable Button first(Choice choice, Hand hand) {
        for (Button button : choice.buttons()) {
            if (button.hand() == hand) {
                return button;
            }
        }
        return null;
    }
}
