package org.bellowscribe.accompaniment;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;

/**
 * The sections of a tune by its repeats. A section ends where the player goes back, where the tune ends, and before a
 * measure to which the player ever goes back; the jump over a first ending ends nothing.
 */
final class Sections {

    private final List<Measure> measures;
    private final Set<Integer> ends = new TreeSet<>();

    /** Finds the sections of a tune. */
    Sections(Tune tune) {
        measures = tune.measures();
        List<Integer> order = tune.playOrder().measures();
        Set<Integer> heads = new TreeSet<>();
        for (int i = 0; i < order.size(); i++) {
            boolean last = i == order.size() - 1;
            if (last || order.get(i + 1) <= order.get(i)) {
                ends.add(order.get(i));
                heads.add(last ? -1 : order.get(i + 1));
            }
        }
        for (int i = 1; i < order.size(); i++) {
            if (heads.contains(order.get(i)) && !isPickUp(order.get(i - 1))) {
                ends.add(order.get(i - 1));
            }
        }
    }

    private boolean isPickUp(int measure) {
        Measure each = measures.get(measure);
        return each.length().times(Fraction.of(2, 1)).compareTo(each.time().measureLength()) <= 0;
    }

    /** Returns true if a section ends with a measure. */
    boolean ends(int measure) {
        return ends.contains(measure);
    }
}
