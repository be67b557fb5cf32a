package org.bellowscribe.drawing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.replay.Sounding;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.AirUse;

/** Says in words what the curve shows, for those who cannot see it. */
final class BellowsWords {

    private static final int PERCENT = 100;

    private final DecidedTune tune;
    private final List<Sounding> performance;
    private final List<String> measures;

    private BellowsWords(DecidedTune tune, List<Sounding> performance) {
        this.tune = tune;
        this.performance = performance;
        measures = new Whereabouts(tune.tune()).measures();
    }

    /** Returns one line. */
    static String of(DecidedTune tune, List<Sounding> performance) {
        return performance.isEmpty() ? "Nothing is played." : new BellowsWords(tune, performance).words();
    }

    private String words() {
        Sounding least = performance.get(0);
        Sounding most = least;
        for (Sounding sounding : performance) {
            least = sounding.openingAfter() < least.openingAfter() ? sounding : least;
            most = sounding.openingAfter() > most.openingAfter() ? sounding : most;
        }
        List<String> sentences = new ArrayList<>();
        sentences.add("How far open the bellows are over one playing, through every repeat: at the start %d %%."
                .formatted(percent(performance.get(0).openingBefore())));
        sentences.add("Least open after measure %s: %d %%. Most open after measure %s: %d %%."
                .formatted(measure(least), percent(least.openingAfter()), measure(most), percent(most.openingAfter())));
        Set<String> pressed = new LinkedHashSet<>();
        performance.stream()
                .filter(sounding -> tune.solution().steps().get(sounding.step()).air() != AirUse.NONE)
                .forEach(sounding -> pressed.add(measure(sounding)));
        sentences.add(
                pressed.isEmpty()
                        ? "The air button is not pressed."
                        : "The air button is pressed in measure %s.".formatted(String.join(", ", pressed)));
        return String.join(" ", sentences);
    }

    private String measure(Sounding sounding) {
        return measures.get(tune.tune().events().get(sounding.step()).measure());
    }

    private long percent(double opening) {
        return Math.round(PERCENT * opening / tune.instrument().bellows().capacity());
    }
}
