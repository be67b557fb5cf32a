package org.bellowscribe.solver;

import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;

/**
 * What the right hand does at an event. Finger k (1 index to 4 little) lies on button {@code handOn + k - 1} of every
 * row; the index finger can stretch one button lower, the little finger one higher.
 *
 * @param direction the way the bellows go
 * @param handOn number of the button under the index finger, 1 or more
 * @param buttons one button for each pitch; empty for a rest
 * @param fingers one finger for each button, 1 to 4
 */
public record Choice(BellowsDirection direction, int handOn, List<Button> buttons, List<Integer> fingers) {

    /** Copies the lists. */
    public Choice {
        buttons = List.copyOf(buttons);
        fingers = List.copyOf(fingers);
    }

    /** Returns true if a finger leaves its own button to reach one. */
    public boolean isStretched(int index) {
        return buttons.get(index).number() != handOn + fingers.get(index) - 1;
    }
}
