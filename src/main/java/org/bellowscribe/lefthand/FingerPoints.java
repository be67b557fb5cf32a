package org.bellowscribe.lefthand;

import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Pace;

/**
 * What the fingers of the left hand cost, in points of their own: they are decided after the solver is done and belong to
 * no cost of its. The index finger is nearest the chin (S18: "Bellows and Strings", lessons, which count the buttons from
 * the little finger and the pair of the outer row last); finger f on button n of any column puts the index finger on
 * button {@code n - (f - 2)}.
 *
 * <ul>
 *   <li>The same finger on another button right after: choppy, the more so the less time there is (S33:
 *       sixstars-melodeon.blogspot.com, 2013, said of the right hand).
 *   <li>A move of the hand: common practice, no source; twice as much while the thumb presses the air button, as the hand
 *       then hangs on it.
 *   <li>The little finger, and a hand above the first button: weak finger of Parncutt et al., Music Perception 14 (1997);
 *       the hand above the buttons: common practice, no source.
 * </ul>
 */
final class FingerPoints {

    /** The index finger; the thumb, 1, stays at the air button. */
    static final int INDEX = 2;

    /** The little finger. */
    static final int LITTLE = 5;

    /** Two buttons struck together by one finger: only where nothing else can be. */
    private static final int TOGETHER = 1000;

    private FingerPoints() {}

    /** Returns the button under the index finger while a finger is on a button; under 1 above the first. */
    static int handOn(LeftHandButton button, int finger) {
        return button.number() - (finger - INDEX);
    }

    /** Returns the points of a finger on a button. */
    static int of(LeftHandButton button, int finger) {
        return (finger == LITTLE ? 1 : 0) + Math.max(0, 1 - handOn(button, finger));
    }

    /**
     * Returns the points of two strokes in turn.
     *
     * @param seconds time between their starts
     */
    static int of(Stroke from, int fromFinger, Stroke to, int toFinger, double seconds) {
        boolean same = from.button().id().equals(to.button().id());
        if (seconds == 0 && !same && fromFinger == toFinger) {
            return TOGETHER;
        }
        Pace pace = Pace.of(seconds);
        int points = !same && fromFinger == toFinger ? again(pace) : 0;
        int moved = Math.abs(handOn(from.button(), fromFinger) - handOn(to.button(), toFinger));
        if (moved > 0) {
            boolean thumb = from.step().air() != AirUse.NONE || to.step().air() != AirUse.NONE;
            points += (move(pace) + moved - 1) * (thumb ? 2 : 1);
        }
        return points;
    }

    private static int again(Pace pace) {
        return switch (pace) {
            case SLOW -> 3;
            case MEDIUM -> 5;
            case QUICK -> 8;
            case VERY_QUICK -> 12;
        };
    }

    private static int move(Pace pace) {
        return switch (pace) {
            case SLOW -> 2;
            case MEDIUM -> 3;
            case QUICK -> 5;
            case VERY_QUICK -> 8;
        };
    }
}
