package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Points;

/**
 * Charges a change of bellows direction under a slur: what is slurred is one stroke of the bellows, as it is of a bow, where
 * the buttons allow it (common practice, no source).
 */
public final class SlurReversal implements PairRule {

    private static final String EACH = "each";

    @Override
    public String id() {
        return "slur-reversal";
    }

    @Override
    public String summary() {
        return "A change between push and pull under a slur breaks it.";
    }

    @Override
    public List<String> cases() {
        return List.of(EACH);
    }

    // A slur leads from one note of the sheet to the next, not from the end of a repeat back to its start.
    @Override
    public int points(Moment before, Choice from, Moment after, Choice to, Points points) {
        boolean goesOn = after.event().slurred()
                && !before.isRest()
                && before.event().index() + 1 == after.event().index();
        return goesOn && from.direction() != to.direction() ? points.of(EACH) : 0;
    }
}
