package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.explain.Explanation;

/** Prices of the other ways to play some notes of a tune, worked out before anybody asks. */
public final class Reasons {

    private Reasons() {}

    /**
     * Prices the notes that are most likely to be asked about: those with air, then those held through a reversal, then
     * those where the left hand stands in, then all others. One solve of the tune for every other way to play a note.
     *
     * @param notes how many at most
     * @return in the order of the score; none if the melody is not played
     */
    public static List<Explanation> of(DecidedTune tune, int notes) {
        if (!tune.task().tune().events().equals(tune.tune().events())) {
            return List.of();
        }
        List<Step> steps = new ArrayList<>(tune.solution().steps());
        // Stable: of one kind in the order of the score.
        steps.sort(Comparator.comparingInt(Reasons::kind));
        return steps.stream()
                .limit(notes)
                .map(step -> step.event().index())
                .sorted()
                .map(event -> Explanation.of(tune.task(), tune.solution(), event))
                .toList();
    }

    private static int kind(Step step) {
        if (step.air() != AirUse.NONE) {
            return 0;
        }
        if (step.held()) {
            return 1;
        }
        return step.leftHand().stream().anyMatch(play -> play.fit() != LeftHandFit.EXACT) ? 2 : 3;
    }
}
