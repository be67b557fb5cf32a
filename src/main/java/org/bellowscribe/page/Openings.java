package org.bellowscribe.page;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.replay.Performance;
import org.bellowscribe.replay.Sounding;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Step;

/**
 * How far the bellows are open through one playing of a tune, as marked, and how they would be if the air button were never
 * pressed and all else were played the same. All in percent of the capacity.
 *
 * @param moments the playings of the steps in order of time
 * @param low least opening to use
 * @param high largest opening to use
 */
record Openings(List<Moment> moments, double low, double high) {

    /** The bellows are calm between a fifth and four fifths, as the solver has it (engineering estimate). */
    static final double CALM_LOW = 20;

    static final double CALM_HIGH = 80;

    /**
     * One playing of a step.
     *
     * @param step 0-based index of the step
     * @param start seconds from the beginning of the performance
     * @param seconds how long it lasts
     * @param before opening when it starts
     * @param air how much more open the bellows are for the air button, less open if negative; 0 where it is not pressed
     * @param after opening when it ends
     * @param withoutBefore opening when it starts had the air button never been pressed; it may be where no bellows can be
     * @param withoutAfter the same when it ends
     */
    record Moment(
            int step,
            double start,
            double seconds,
            double before,
            double air,
            double after,
            double withoutBefore,
            double withoutAfter) {

        /** Returns when it ends. */
        double end() {
            return start + seconds;
        }
    }

    /** Returns the openings of a tune. */
    static Openings of(DecidedTune tune) {
        Bellows bellows = tune.instrument().bellows();
        double percent = 100 / bellows.capacity();
        List<Moment> moments = new ArrayList<>();
        double start = 0;
        double taken = 0;
        for (Sounding sounding : Performance.of(tune.tune(), tune.instrument(), tune.solution())) {
            Step step = tune.solution().steps().get(sounding.step());
            double air = step.air() == AirUse.NONE ? 0 : step.direction().sign() * sounding.airTaken() * percent;
            double before = sounding.openingBefore() * percent;
            double after = sounding.openingAfter() * percent;
            moments.add(new Moment(
                    sounding.step(),
                    start,
                    sounding.seconds(),
                    before,
                    air,
                    after,
                    before - taken,
                    after - taken - air));
            start += sounding.seconds();
            taken += air;
        }
        return new Openings(moments, bellows.lowest() * percent, bellows.highest() * percent);
    }

    /** Returns true if the air button is pressed anywhere. */
    boolean usesAir() {
        return moments.stream().anyMatch(moment -> moment.air() != 0);
    }

    /** Returns the first moment in which bellows whose air button is never pressed come to their end; -1 if none does. */
    int runsOut() {
        for (int i = 0; i < moments.size(); i++) {
            double after = moments.get(i).withoutAfter();
            if (after < low - 0.05 || after > high + 0.05) {
                return i;
            }
        }
        return -1;
    }

    /** Returns the moment at whose end the bellows are least open. */
    int mostClosed() {
        int least = 0;
        for (int i = 1; i < moments.size(); i++) {
            least = moments.get(i).after() < moments.get(least).after() ? i : least;
        }
        return least;
    }

    /** Returns the moment at whose end the bellows are most open. */
    int mostOpen() {
        int most = 0;
        for (int i = 1; i < moments.size(); i++) {
            most = moments.get(i).after() > moments.get(most).after() ? i : most;
        }
        return most;
    }
}
