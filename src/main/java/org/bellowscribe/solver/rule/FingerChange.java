package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Pace;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Points;

/**
 * Charges another finger on a button that is struck again at once, in the same direction or the other, by the time there is: a
 * finger that has just played keeps its button (common practice, no source; four players who marked 28 tunes never change it after
 * a note of less than 0.15 seconds).
 */
public final class FingerChange implements PairRule {

    @Override
    public String id() {
        return "finger-change";
    }

    @Override
    public String summary() {
        return "Another finger on a button that is struck again at once.";
    }

    @Override
    public List<String> cases() {
        return Pace.CASES;
    }

    @Override
    public int points(Moment before, Choice from, Moment after, Choice to, Points points) {
        int count = 0;
        for (int i = 0; i < from.buttons().size(); i++) {
            Button last = from.buttons().get(i);
            for (int j = 0; j < to.buttons().size(); j++) {
                Button next = to.buttons().get(j);
                boolean again =
                        last.hand() == next.hand() && last.row() == next.row() && last.number() == next.number();
                count += again && !from.fingers().get(i).equals(to.fingers().get(j)) ? 1 : 0;
            }
        }
        return count * points.of(before.pace());
    }
}
