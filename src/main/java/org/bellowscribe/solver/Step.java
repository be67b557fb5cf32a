package org.bellowscribe.solver;

import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.score.Event;

/**
 * A written event with what is played at it. The same on every pass.
 *
 * @param event the event
 * @param direction the way the bellows go
 * @param buttons one button for each pitch of the event, in the same order; empty for a rest
 * @param fingers one finger for each button, 1 (index) to 4 (little)
 * @param handOn number of the button under the index finger, on the row of the buttons (for a rest on the outer one): the
 *     place of the hand along the rows
 * @param held true if, coming from every event that can sound before it, a button stays down through a reversal
 * @param leftHand what the left hand does, in order of time
 * @param air how far the air button is pressed
 * @param openingBefore opening of the bellows when it starts, in thousandths of a RU.s
 * @param openingAfter opening of the bellows when it ends, in thousandths of a RU.s
 * @param airTaken air moved through the air button, in thousandths of a RU.s, 0 or more
 */
public record Step(
        Event event,
        BellowsDirection direction,
        List<Button> buttons,
        List<Integer> fingers,
        int handOn,
        boolean held,
        List<LeftHandPlay> leftHand,
        AirUse air,
        int openingBefore,
        int openingAfter,
        int airTaken) {

    /** Copies the lists. */
    public Step {
        buttons = List.copyOf(buttons);
        fingers = List.copyOf(fingers);
        leftHand = List.copyOf(leftHand);
    }

    /**
     * Returns true if the hand has moved since another step. A button of an inner row lies half a button higher than the same
     * number of the outer row; half a button is no move: the hand leans a little, and the fingers tell.
     */
    public boolean isMovedFrom(Step other) {
        return Math.abs(halves() - other.halves()) > 1;
    }

    /** Returns true if a button of an inner row is pressed. */
    public boolean isOnInnerRow() {
        return buttons.stream().anyMatch(button -> button.row() > 1);
    }

    private int halves() {
        return 2 * handOn + (isOnInnerRow() ? 1 : 0);
    }

    /** Returns the same step without the air button, the openings as they are: for what is told of it, not for playing. */
    public Step withoutAir() {
        return new Step(
                event,
                direction,
                buttons,
                fingers,
                handOn,
                held,
                leftHand,
                AirUse.NONE,
                openingBefore,
                openingAfter,
                airTaken);
    }

    /** Returns the same step at another event: the written one of a melody that is not played. */
    public Step with(Event other) {
        return new Step(
                other, direction, buttons, fingers, handOn, held, leftHand, air, openingBefore, openingAfter, airTaken);
    }
}
