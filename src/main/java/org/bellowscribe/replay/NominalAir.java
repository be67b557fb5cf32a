package org.bellowscribe.replay;

import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Pitch;

/** How much air the reeds of a step take at usual loudness. */
final class NominalAir {

    private NominalAir() {}

    /** Returns the air in RU.s: the melody for the whole event, every left-hand sound for its own time. */
    static double of(Tune tune, Instrument instrument, Step step) {
        double air = 0;
        for (Pitch pitch : step.event().pitches()) {
            air += instrument.air().flow(pitch) * tune.seconds(step.event());
        }
        for (LeftHandPlay play : step.leftHand()) {
            LeftHandSound sound = play.sound();
            if (sound != null) {
                air += instrument.air().flow(sound)
                        * tune.tempo().seconds(play.wanted().duration());
            }
        }
        return air;
    }
}
