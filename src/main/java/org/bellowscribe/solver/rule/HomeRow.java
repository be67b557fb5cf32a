package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.StepRule;

/**
 * Charges a note, or a note group, off the row that is home in the key of its measure: a player leaves it for a reason, a
 * chord or a run in one direction, not for nothing (common practice, no source). Less is charged in the one direction in
 * which the left hand has the harmony: that chord asks for it (S18, "Bellows and Strings" blog, lesson on "The Sloe": B on
 * the row of the chord). Which row and which directions stands in the moment.
 */
public final class HomeRow implements StepRule {

    private static final String EACH = "each";
    private static final String WITH_CHORD = "with-chord";

    @Override
    public String id() {
        return "home-row";
    }

    @Override
    public String summary() {
        return "A note off the row of the key, less where the chord is on that side of the bellows only.";
    }

    @Override
    public List<String> cases() {
        return List.of(EACH, WITH_CHORD);
    }

    @Override
    public int points(Moment moment, Choice choice, Points points) {
        boolean away = moment.homeRow() != Moment.NO_ROW
                && choice.buttons().stream().anyMatch(button -> button.row() != moment.homeRow());
        return !away ? 0 : points.of(asks(moment, choice.direction()) ? WITH_CHORD : EACH);
    }

    private static boolean asks(Moment moment, BellowsDirection direction) {
        return moment.chordWays().size() == 1 && moment.chordWays().contains(direction);
    }
}
