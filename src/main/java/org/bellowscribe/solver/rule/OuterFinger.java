package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.StepRule;

/**
 * Charges the index and the little finger: the hand lies where the two fingers between them play most, and the outer ones
 * reach what lies at either end (common practice, no source). The lowest note of the tune is the index finger's own, so that
 * it does not lie idle below a tune of few notes (published for the scale of G on the G row: S18, "Bellows and Strings"
 * blog). Strapped hands cannot lie elsewhere.
 */
public final class OuterFinger implements StepRule {

    private static final int INDEX = 1;
    private static final int LITTLE = 4;
    private static final String EACH = "each";

    @Override
    public String id() {
        return "outer-finger";
    }

    @Override
    public String summary() {
        return "The index and the little finger: the hand should lie where the two between them play most.";
    }

    @Override
    public List<String> cases() {
        return List.of(EACH);
    }

    @Override
    public int points(Moment moment, Choice choice, Points points) {
        if (choice.grip().strapped()) {
            return 0;
        }
        long outer = choice.fingers().stream()
                .filter(finger -> finger == LITTLE || (finger == INDEX && !moment.lowest()))
                .count();
        return (int) outer * points.of(EACH);
    }
}
