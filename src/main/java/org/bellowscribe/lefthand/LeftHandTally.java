package org.bellowscribe.lefthand;

import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.instrument.Instrument;
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
        int asWanted = 0;
        int standIns = 0;
        int silent = 0;
        for (Step step : solution.steps()) {
            for (LeftHandPlay play : step.leftHand()) {
                LeftHandFit fit = play.fit();
                asWanted += fit == LeftHandFit.EXACT ? 1 : 0;
                silent += fit == LeftHandFit.SILENT ? 1 : 0;
                standIns += fit != LeftHandFit.EXACT && fit != LeftHandFit.SILENT ? 1 : 0;
            }
        }
        int other = (int) Stroke.of(solution).stream()
                .filter(stroke -> stroke.isOnOtherButton(instrument))
                .count();
        return new LeftHandTally(asWanted, standIns, silent, other);
    }

    /** Returns how many strokes the pattern wants. */
    public int wanted() {
        return asWanted + standIns + silent;
    }
}
