package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Hand;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.StepRule;

/**
 * Charges buttons away from those that a beginner learns first: 3 to 6, under the four fingers of the home position
 * (published: S18, "Bellows and Strings" blog), and 7, its last where the home note is on button 4. Does not count for a
 * concertina, whose hands cannot move.
 */
public final class FarButton implements StepRule {

    private static final int FIRST = 3;
    private static final int LAST = 7;
    private static final String PER_BUTTON = "per-button";

    @Override
    public String id() {
        return "far-button";
    }

    @Override
    public String summary() {
        return "A button away from the home position of the hand costs by the way there.";
    }

    @Override
    public List<String> cases() {
        return List.of(PER_BUTTON);
    }

    @Override
    public int points(Moment moment, Choice choice, Points points) {
        int way = 0;
        for (Button button : choice.buttons()) {
            if (!choice.grip().strapped() && button.hand() == Hand.RIGHT) {
                way += Math.max(0, Math.max(FIRST - button.number(), button.number() - LAST));
            }
        }
        return way * points.of(PER_BUTTON);
    }
}
