package org.bellowscribe.page;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Step;

/**
 * How often each button is struck in one playing of a tune, on the push and on the pull; what only sounds on over a bar line
 * is not struck.
 *
 * @param melody by id of the button; a button that is never struck is not there
 * @param basses the same of the left hand
 */
record ButtonCount(Map<String, int[]> melody, Map<String, int[]> basses) {

    static final int[] NEVER = {0, 0};

    /** Counts a tune. */
    static ButtonCount of(DecidedTune tune) {
        ButtonCount count = new ButtonCount(new TreeMap<>(), new TreeMap<>());
        for (int event : tune.tune().eventOrder()) {
            Step step = tune.solution().steps().get(event);
            for (Button button : step.event().heldOver() ? List.<Button>of() : step.buttons()) {
                add(count.melody, button.id(), step.direction());
            }
            for (LeftHandPlay play : step.leftHand()) {
                LeftHandButton button = play.button();
                if (button != null) {
                    add(count.basses, button.id(), step.direction());
                }
            }
        }
        return count;
    }

    private static void add(Map<String, int[]> times, String id, BellowsDirection direction) {
        times.computeIfAbsent(id, each -> new int[2])[direction == BellowsDirection.PUSH ? 0 : 1]++;
    }
}
