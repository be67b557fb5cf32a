package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.accompaniment.HarmonyOption;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.LeftHandRule;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Points;

/** Charges a guessed harmony by how badly it fits the melody of its measure; a chord symbol of the score fits. */
public final class HarmonyMisfit implements LeftHandRule {

    private static final String FACTOR = "factor";

    @Override
    public String id() {
        return "harmony-misfit";
    }

    @Override
    public String summary() {
        return "A guessed harmony costs by how badly it fits the melody of its measure.";
    }

    @Override
    public List<String> cases() {
        return List.of(FACTOR);
    }

    @Override
    public int points(Moment moment, LeftHandPlay play, LeftHandFit fit, Points points) {
        for (HarmonyOption option : play.wanted().harmonies()) {
            if (option.chord().equals(play.harmony())) {
                return fit == LeftHandFit.SILENT ? 0 : option.misfit() * points.of(FACTOR);
            }
        }
        return 0;
    }
}
