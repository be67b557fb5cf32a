package org.bellowscribe.solver;

import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Grip;

/**
 * What plays the melody at an event. A hand that moves has finger k (1 index to 4 little) on button
 * {@code handOn + k - 1} of every row; the index finger can stretch one button lower, the little finger one higher. How
 * the strapped hands of a concertina lie is told by the grip.
 *
 * @param direction the way the bellows go
 * @param handOn number of the button under the index finger, 1 or more; always 1 for strapped hands
 * @param buttons one button for each pitch; empty for a rest
 * @param fingers one finger for each button, 1 to 4, of the button's own hand
 * @param grip how the instrument is held
 */
public record Choice(BellowsDirection direction, int handOn, List<Button> buttons, List<Integer> fingers, Grip grip) {

    /** Copies the lists. */
    public Choice {
        buttons = List.copyOf(buttons);
        fingers = List.copyOf(fingers);
    }

    /** Creates a choice for one hand that moves. */
    public Choice(BellowsDirection direction, int handOn, List<Button> buttons, List<Integer> fingers) {
        this(direction, handOn, buttons, fingers, Grip.MOVING);
    }

    /** Returns true if a finger leaves its own button to reach one, or lies across two and this is the second. */
    public boolean isStretched(int index) {
        boolean across = !grip.strapped() && fingers.indexOf(fingers.get(index)) < index;
        return across || !grip.isHome(buttons.get(index), handOn, fingers.get(index));
    }

    /** Returns true if beside a button of the group lies another of it. */
    public boolean hasButtonBeside(int index) {
        return buttons.stream().anyMatch(buttons.get(index)::isBeside);
    }
}
