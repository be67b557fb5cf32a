package org.bellowscribe.solver.rule;

import java.util.List;
import org.bellowscribe.solver.MeasureRule;
import org.bellowscribe.solver.Points;

/**
 * Charges a measure whose buttons, bellows direction, left hand or air are not those of most measures that are written
 * the same: a sheet is learned measure by measure (common practice, no source).
 */
public final class UnlikeMeasure implements MeasureRule {

    private static final String EACH = "each";

    @Override
    public String id() {
        return "unlike-measure";
    }

    @Override
    public String summary() {
        return "Measures that are written the same should be played the same.";
    }

    @Override
    public List<String> cases() {
        return List.of(EACH);
    }

    @Override
    public int points(Points points) {
        return points.of(EACH);
    }
}
