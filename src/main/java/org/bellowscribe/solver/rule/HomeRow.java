package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.StepRule;

/**
 * Charges a note, or a note group, off the row that is home in the key of its measure: a player leaves it for a reason, a chord or a run in
 * one direction, not for nothing (common practice, no source). Which row that is stands in the moment.
 */
public final class HomeRow implements StepRule {

    private static final String EACH = "each";

    @Override
    public String id() {
        return "home-row";
    }

    @Override
    public String summary() {
        return "A note off the row of the key.";
    }

    @Override
    public List<String> cases() {
        return List.of(EACH);
    }

    @Override
    public int points(Moment moment, Choice choice, Points points) {
        boolean away = moment.homeRow() != Moment.NO_ROW
                && choice.buttons().stream().anyMatch(button -> button.row() != moment.homeRow());
        return away ? points.of(EACH) : 0;
    }
}
