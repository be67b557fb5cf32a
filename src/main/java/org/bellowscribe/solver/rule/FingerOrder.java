package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.PairRule;
import org.bellowscribe.solver.Points;

/**
 * Charges fingers of single notes out of the order of the buttons: a lower finger on the next button up or a higher one on
 * the next button down. The hand has moved and the fingers cross, where a player lets the hand keep its place (common practice,
 * no source). A rest leaves the time for it. The fingers of a strapped hand have their own buttons.
 */
public final class FingerOrder implements PairRule {

    private static final String EACH = "each";

    @Override
    public String id() {
        return "finger-order";
    }

    @Override
    public String summary() {
        return "A lower finger on a higher button, or a higher one on a lower button.";
    }

    @Override
    public List<String> cases() {
        return List.of(EACH);
    }

    @Override
    public int points(Moment before, Choice from, Moment after, Choice to, Points points) {
        if (!isSingle(from) || !isSingle(to) || to.grip().strapped()) {
            return 0;
        }
        int fingersUp = to.fingers().get(0) - from.fingers().get(0);
        int halvesUp = halves(to.buttons().get(0)) - halves(from.buttons().get(0));
        return fingersUp * halvesUp < 0 ? points.of(EACH) : 0;
    }

    private static boolean isSingle(Choice choice) {
        return choice.buttons().size() == 1;
    }

    // The buttons of an inner row lie between those of the outer one.
    private static int halves(Button button) {
        return 2 * button.number() + (button.row() > 1 ? 1 : 0);
    }
}
