package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;

/**
 * The bellows of a tune practiced alone: no note sounds, and what the reeds would take goes through the air button. So they
 * turn where they do in the tune and go as far; or, where full chords take more than a fully pressed air button passes, all
 * the way through by the same share less, so that they still come back to where they were.
 */
final class SilentBellows {

    private static final double THOUSANDTHS = 1000;

    private SilentBellows() {}

    /** Returns what an independent player could not do; empty if nothing. */
    static List<Diagnostic> replay(DecidedTune decided) {
        return Playing.replay(Playing.silent(decided.tune()), decided.instrument(), solution(decided));
    }

    private static Solution solution(DecidedTune decided) {
        Tune tune = decided.tune();
        Bellows bellows = decided.instrument().bellows();
        int start = decided.solution().steps().get(tune.eventOrder().get(0)).openingBefore();
        double share = share(decided);
        List<Step> steps = new ArrayList<>();
        for (Step step : decided.solution().steps()) {
            int before = scaled(step.openingBefore(), start, share);
            int after = scaled(step.openingAfter(), start, share);
            int moved = Math.abs(after - before);
            double light = bellows.lightAirFlow() * tune.seconds(step.event()) * THOUSANDTHS;
            AirUse use = moved == 0 ? AirUse.NONE : moved <= light ? AirUse.LIGHT : AirUse.FULL;
            steps.add(new Step(
                    step.event().silent(),
                    step.direction(),
                    List.of(),
                    List.of(),
                    step.handOn(),
                    false,
                    List.of(),
                    use,
                    before,
                    after,
                    moved));
        }
        Solution whole = decided.solution();
        return new Solution(steps, whole.again(), whole.cost(), whole.unlike());
    }

    // A whole thousandth either way may come of rounding.
    private static double share(DecidedTune decided) {
        double share = 1;
        double full = decided.instrument().bellows().fullAirFlow();
        for (Step step : decided.solution().steps()) {
            double most = full * decided.tune().seconds(step.event()) * THOUSANDTHS;
            int moved = Math.abs(step.openingAfter() - step.openingBefore());
            if (moved > most) {
                share = Math.min(share, Math.max(0, most - 1) / moved);
            }
        }
        return share;
    }

    private static int scaled(int opening, int start, double share) {
        return start + (int) Math.round(share * (opening - start));
    }
}
