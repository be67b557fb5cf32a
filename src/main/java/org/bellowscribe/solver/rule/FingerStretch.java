package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.StepRule;

/** Charges a finger that leaves its own button: the index reaching one lower, the little finger one higher. */
public final class FingerStretch implements StepRule {

    private static final String EACH = "each";

    @Override
    public String id() {
        return "finger-stretch";
    }

    @Override
    public String summary() {
        return "A finger that leaves its own button to reach the next one is strained.";
    }

    @Override
    public List<String> cases() {
        return List.of(EACH);
    }

    @Override
    public int points(Moment moment, Choice choice, Points points) {
        int count = 0;
        for (int i = 0; i < choice.buttons().size(); i++) {
            count += choice.isStretched(i) ? 1 : 0;
        }
        return count * points.of(EACH);
    }
}
