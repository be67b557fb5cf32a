package org.bellowscribe.drawing;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.replay.Performance;
import org.bellowscribe.replay.Sounding;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Step;

/**
 * How often each button is struck in one playing of a tune. A note that only sounds on over a bar line is not struck.
 *
 * @param melody by id of the button
 * @param leftHand by id of the button; one that is never struck is in neither
 */
public record ButtonUse(Map<String, Times> melody, Map<String, Times> leftHand) {

    /**
     * How often a button is struck.
     *
     * @param push on the push
     * @param pull on the pull
     */
    public record Times(int push, int pull) {

        /** Never. */
        public static final Times NONE = new Times(0, 0);

        Times plus(BellowsDirection direction) {
            return direction == BellowsDirection.PUSH ? new Times(push + 1, pull) : new Times(push, pull + 1);
        }

        /** Returns how often in all. */
        public int sum() {
            return push + pull;
        }

        int most() {
            return Math.max(push, pull);
        }
    }

    /** Counts a tune. */
    public static ButtonUse of(DecidedTune tune) {
        ButtonUse use = new ButtonUse(new TreeMap<>(), new TreeMap<>());
        List<Step> steps = tune.solution().steps();
        for (Sounding sounding : Performance.of(tune.tune(), tune.instrument(), tune.solution())) {
            use.add(steps.get(sounding.step()));
        }
        return use;
    }

    private void add(Step step) {
        for (Button button : step.event().heldOver() ? List.<Button>of() : step.buttons()) {
            add(melody, button.id(), step.direction());
        }
        for (LeftHandPlay play : step.leftHand()) {
            LeftHandButton button = play.button();
            if (button != null) {
                add(leftHand, button.id(), step.direction());
            }
        }
    }

    private static void add(Map<String, Times> times, String id, BellowsDirection direction) {
        times.put(id, times.getOrDefault(id, Times.NONE).plus(direction));
    }
}
