package org.bellowscribe.lefthand;

import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;

/**
 * How many strokes of the left hand on a sheet are what the pattern and the harmony want.
 *
 * @param asWanted strokes that are
 * @param standIns strokes with something else in their place
 * @param silent strokes left out
 * @param onOtherButton strokes whose sound the other direction has too, but on another button
 */
public record LeftHandTally(int asWanted, int standIns, int silent, int onOtherButton) {

    /** Counts the strokes of a sheet, each once however often it is repeated. */
    public static LeftHandTally of(Instrument instrument, Solution solution) {
        LeftHandTally tally = new LeftHandTally(0, 0, 0, 0);
        for (Step step : solution.steps()) {
            for (LeftHandPlay play : step.leftHand()) {
                tally = tally.plus(play, isOnOtherButton(instrument, step.direction(), play));
            }
        }
        return tally;
    }

    private LeftHandTally plus(LeftHandPlay play, boolean otherButton) {
        LeftHandFit fit = play.fit();
        int more = otherButton ? 1 : 0;
        return switch (fit) {
            case EXACT -> new LeftHandTally(asWanted + 1, standIns, silent, onOtherButton + more);
            case SILENT -> new LeftHandTally(asWanted, standIns, silent + 1, onOtherButton);
            default -> new LeftHandTally(asWanted, standIns + 1, silent, onOtherButton + more);
        };
    }

    private static boolean isOnOtherButton(Instrument instrument, BellowsDirection direction, LeftHandPlay play) {
        LeftHandSound sound = play.sound();
        LeftHandButton pressed = play.button();
        if (sound == null || pressed == null) {
            return false;
        }
        BellowsDirection other = direction == BellowsDirection.PUSH ? BellowsDirection.PULL : BellowsDirection.PUSH;
        return !sound.equals(pressed.sound(other))
                && instrument.leftHand().stream().anyMatch(button -> sound.equals(button.sound(other)));
    }

    /** Returns how many strokes the pattern wants. */
    public int wanted() {
        return asWanted + standIns + silent;
    }
}
