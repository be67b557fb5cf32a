package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Pace;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Points;

/**
 * Charges a change of bellows direction inside a measure by the time there is: played smoothly, the bellows turn at the bar
 * lines (published: W059, "Bellows and Strings" blog, 14 Mar 2010, La Marianne).
 */
public final class MeasureReversal implements PairRule {

    @Override
    public String id() {
        return "measure-reversal";
    }

    @Override
    public String summary() {
        return "A quick change between push and pull inside a measure is heard more than one at the bar line.";
    }

    @Override
    public List<String> cases() {
        return Pace.CASES;
    }

    @Override
    public int points(Moment before, Choice from, Moment after, Choice to, Points points) {
        boolean turns = from.direction() != to.direction() && !before.isRest();
        return turns && before.event().measure() == after.event().measure() ? points.of(before.pace()) : 0;
    }
}
