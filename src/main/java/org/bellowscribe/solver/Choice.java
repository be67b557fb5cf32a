package org.bellowscribe.solver;

import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Grip;

/**
 * What plays the melody at an event. A hand that moves has finger k (1 index to 4 little) on button
 * {@code handOn + k - 1}; the index finger can stretch one button lower, the little finger one higher. The buttons of an
 * inner row lie between those of the row outside it, so a hand can lie level, on the same numbers of all rows, or lean half
 * a button lower, on numbers of the inner rows that are one less than those of the outer one; a hand that leans does not
 * stretch (published: W033, "Bellows and Strings" blog, 25 May 2010: E on the outer row with the index, then A on the same
 * number of the inner row with the middle finger). How the strapped hands of a concertina lie is told by the grip.
 *
 * @param direction the way the bellows go
 * @param handOn number of the button under the index finger, on the row of the buttons, 1 or more; always 1 for strapped
 *     hands
 * @param leaning true if the hand lies one button lower on the inner rows than on the outer one
 * @param buttons one button for each pitch; empty for a rest
 * @param fingers one finger for each button, 1 to 4, of the button's own hand
 * @param grip how the instrument is held
 */
public record Choice(
        BellowsDirection direction,
        int handOn,
        boolean leaning,
        List<Button> buttons,
        List<Integer> fingers,
        Grip grip) {

    /** Copies the lists. */
    public Choice {
        buttons = List.copyOf(buttons);
        fingers = List.copyOf(fingers);
    }

    /** Creates a choice for a hand that does not lean. */
    public Choice(BellowsDirection direction, int handOn, List<Button> buttons, List<Integer> fingers, Grip grip) {
        this(direction, handOn, false, buttons, fingers, grip);
    }

    /** Creates a choice for one hand that moves. */
    public Choice(BellowsDirection direction, int handOn, List<Button> buttons, List<Integer> fingers) {
        this(direction, handOn, buttons, fingers, Grip.MOVING);
    }

    /** Returns true if a finger leaves its own button to reach one, or lies across two and this is the second. */
    public boolean isStretched(int index) {
        Button button = buttons.get(index);
        boolean across = !grip.strapped() && fingers.indexOf(fingers.get(index)) < index;
        return across || !grip.isHome(button, handOn, fingers.get(index));
    }

    /** Returns true if beside a button of the group lies another of it. */
    public boolean hasButtonBeside(int index) {
        return buttons.stream().anyMatch(buttons.get(index)::isBeside);
    }

    /** Returns true if some of the buttons are on the outer row and some on inner ones. */
    public boolean isOverOuterAndInnerRow() {
        return isOnInnerRow() && buttons.stream().anyMatch(button -> button.row() == 1);
    }

    /** Returns the place of the hand in halves of a button along the outer row: a hand that leans lies half a button lower. */
    public int halves() {
        return 2 * handOn + (!leaning ? 0 : isOnInnerRow() ? 1 : -1);
    }

    private boolean isOnInnerRow() {
        for (Button button : buttons) {
            if (button.row() > 1) {
                return true;
            }
        }
        return false;
    }
}
