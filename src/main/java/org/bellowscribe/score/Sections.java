package org.bellowscribe.score;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.bellowscribe.theory.Fraction;

/**
 * The sections (strains) of a tune by its repeats. A section ends where the player goes back, where the tune ends, and
 * before a measure to which the player ever goes back; the jump over a first ending ends nothing.
 */
public final class Sections {

    private static final Fraction TWICE = Fraction.of(2, 1);

    private final List<Measure> measures;
    private final Set<Integer> ends = new TreeSet<>();
    private final Set<Integer> closing = new TreeSet<>();

    /** Finds the sections of a tune. */
    public Sections(Tune tune) {
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
        ends.forEach(measure -> addClosing(tune, measure));
    }

    private boolean isPickUp(int measure) {
        Measure each = measures.get(measure);
        return each.length().times(TWICE).compareTo(each.time().measureLength()) <= 0;
    }

    private void addClosing(Tune tune, int measure) {
        Event longest = null;
        for (Event event : tune.events()) {
            boolean here = event.measure() == measure && !event.isRest();
            if (here && (longest == null || event.duration().compareTo(longest.duration()) >= 0)) {
                longest = event;
            }
        }
        if (longest != null) {
            closing.add(longest.index());
        }
    }

    /** Returns true if a section ends with a measure. */
    public boolean ends(int measure) {
        return ends.contains(measure);
    }

    /**
     * Returns true if a section closes with an event: the longest note of its last measure, of equal ones the latest, because
     * quick notes after it lead on to what follows (common practice, no source).
     */
    public boolean closes(Event event) {
        return closing.contains(event.index());
    }
}
