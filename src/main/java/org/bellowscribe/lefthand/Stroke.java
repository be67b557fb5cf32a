package org.bellowscribe.lefthand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Fraction;

/**
 * A left-hand button that is pressed, at one place of the sheet.
 *
 * @param step the step during which it is pressed
 * @param play 0-based place among what the left hand does at that step
 * @param button the button
 * @param sound what it sounds
 */
public record Stroke(Step step, int play, LeftHandButton button, LeftHandSound sound) {

    /** Returns all strokes in score order; of two at one moment that of the earlier play first. */
    public static List<Stroke> of(Solution solution) {
        List<Stroke> strokes = new ArrayList<>();
        solution.steps().forEach(step -> strokes.addAll(of(step)));
        return strokes;
    }

    private static List<Stroke> of(Step step) {
        List<Stroke> strokes = new ArrayList<>();
        for (int i = 0; i < step.leftHand().size(); i++) {
            LeftHandPlay play = step.leftHand().get(i);
            LeftHandButton button = play.button();
            LeftHandSound sound = play.sound();
            if (button != null && sound != null) {
                strokes.add(new Stroke(step, i, button, sound));
            }
        }
        strokes.sort(Comparator.comparing(Stroke::offset));
        return strokes;
    }

    /** Returns the 0-based index of the event during which it falls. */
    public int event() {
        return step.event().index();
    }

    /** Returns true if the other direction has the same sound too, but on another button. */
    public boolean isOnOtherButton(Instrument instrument) {
        BellowsDirection other =
                step.direction() == BellowsDirection.PUSH ? BellowsDirection.PULL : BellowsDirection.PUSH;
        return !sound.equals(button.sound(other))
                && instrument.leftHand().stream().anyMatch(each -> sound.equals(each.sound(other)));
    }

    /** Returns the time from the start of that event. */
    public Fraction offset() {
        return step.leftHand().get(play).wanted().offset();
    }

    /** Returns how long it sounds; never beyond the end of the event. */
    public Fraction duration() {
        return step.leftHand().get(play).wanted().duration();
    }
}
