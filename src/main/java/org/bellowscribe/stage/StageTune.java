package org.bellowscribe.stage;

import org.bellowscribe.decision.DecidedTune;

/**
 * A tune decided for one stage: button, direction, finger and place of the hand are those of the whole tune, the air and the
 * openings those that are right for what sounds in the stage, at its tempo.
 *
 * @param stage the stage
 * @param percent the tempo of the stage in percent of that of the tune, 1 or more
 * @param tune the tune as it is played in the stage; its tempo is that of the stage
 */
public record StageTune(Stage stage, int percent, DecidedTune tune) {

    /** The tempo of the tune. */
    public static final int FULL = 100;

    /** Checks the tempo. */
    public StageTune {
        if (percent < 1) {
            throw new IllegalArgumentException("The percent (%d) must be 1 or more.".formatted(percent));
        }
    }

    /** Returns true if it goes at another tempo than the tune. */
    public boolean hasOwnTempo() {
        return percent != FULL;
    }
}
