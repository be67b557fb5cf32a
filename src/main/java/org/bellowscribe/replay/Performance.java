package org.bellowscribe.replay;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;

/** One playing of a tune: its steps as they sound, through every repeat and ending. */
public final class Performance {

    private static final double THOUSANDTHS = 1000;

    private Performance() {}

    /** Returns the playings of the steps in order of time. */
    public static List<Sounding> of(Tune tune, Instrument instrument, Solution solution) {
        int[] passes = new int[solution.steps().size()];
        List<Sounding> soundings = new ArrayList<>();
        for (int event : tune.eventOrder()) {
            passes[event]++;
            soundings.add(sounding(tune, instrument, sounding(solution.steps().get(event)), passes[event]));
        }
        return soundings;
    }

    // A melody that is not played has no buttons, and nothing sounds.
    private static Step sounding(Step step) {
        return step.buttons().isEmpty() ? step.with(step.event().silent()) : step;
    }

    private static Sounding sounding(Tune tune, Instrument instrument, Step step, int pass) {
        double seconds = tune.seconds(step.event());
        int moved = step.direction().sign() * (step.openingAfter() - step.openingBefore());
        return new Sounding(
                step.event().index(),
                pass,
                seconds,
                (moved - step.airTaken()) / THOUSANDTHS / seconds,
                NominalAir.of(tune, instrument, step) / seconds,
                step.airTaken() / THOUSANDTHS,
                step.openingBefore() / THOUSANDTHS,
                step.openingAfter() / THOUSANDTHS);
    }
}
