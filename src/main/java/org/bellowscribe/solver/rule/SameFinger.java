package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Pace;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Points;

/**
 * Charges the same finger on two different buttons in a row, whether the hand stays or moves: it sounds choppy (published:
 * S33, sixstars-melodeon.blogspot.com, 2013).
 */
public final class SameFinger implements PairRule {

    @Override
    public String id() {
        return "same-finger";
    }

    @Override
    public String summary() {
        return "The same finger on two different buttons in a row sounds choppy.";
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
        int count = 0;
        for (int i = 0; i < from.buttons().size(); i++) {
            for (int j = 0; j < to.buttons().size(); j++) {
                Button last = from.buttons().get(i);
                Button next = to.buttons().get(j);
                boolean sameFinger = last.hand() == next.hand()
                        && from.fingers().get(i).equals(to.fingers().get(j));
                boolean other = last.row() != next.row() || last.number() != next.number();
                count += sameFinger && other ? 1 : 0;
            }
        }
        return count * points.of(before.pace());
    }
}
