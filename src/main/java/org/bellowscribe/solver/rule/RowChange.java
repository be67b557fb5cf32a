package org.bellowscribe.solver.rule;

import java.util.List;
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

    private static final List<Hand> HANDS = List.of(Hand.values());

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
        for (Hand hand : HANDS) {
            int last = rows(from, hand);
            int next = rows(to, hand);
            if (last != 0 && next != 0 && last != next) {
                return points.of(before.pace());
            }
        }
        return 0;
    }

    // A bit for each row: this is asked for every two choices that may follow each other.
    private static int rows(Choice choice, Hand hand) {
        int rows = 0;
        for (Button button : choice.buttons()) {
            if (button.hand() == hand) {
                rows |= 1 << button.row();
            }
        }
        return rows;
    }
}
