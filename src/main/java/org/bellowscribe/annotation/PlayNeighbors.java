package org.bellowscribe.annotation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;

/** Which events come right before which in the order of play. */
public final class PlayNeighbors {

    private final List<SortedSet<Integer>> before = new ArrayList<>();
    private final SortedSet<Integer> sectionStarts = new TreeSet<>();

    private PlayNeighbors() {}

    /** Follows the notes of a tune through every repeat and ending. */
    public static PlayNeighbors of(Tune tune) {
        return of(tune, event -> !event.isRest());
    }

    /**
     * Follows a tune through every repeat and ending.
     *
     * @param counts true for the events to look at; all others are passed over
     */
    public static PlayNeighbors of(Tune tune, Predicate<Event> counts) {
        PlayNeighbors neighbors = new PlayNeighbors();
        tune.events().forEach(event -> neighbors.before.add(new TreeSet<>()));
        List<Integer> order = tune.eventOrder();
        SortedSet<Integer> starts = starts(order);
        int last = -1;
        boolean atStart = false;
        for (int index : order) {
            atStart |= starts.contains(index);
            if (!counts.test(tune.events().get(index))) {
                continue;
            }
            if (atStart) {
                neighbors.sectionStarts.add(index);
            }
            if (last >= 0) {
                neighbors.before.get(index).add(last);
            }
            last = index;
            atStart = false;
        }
        return neighbors;
    }

    /** Returns the first event, those to which a jump leads, and those that follow in writing where a jump leaves. */
    private static SortedSet<Integer> starts(List<Integer> order) {
        SortedSet<Integer> starts = new TreeSet<>();
        int last = -1;
        for (int index : order) {
            if (index != last + 1 || last < 0) {
                starts.add(index);
                starts.add(last + 1);
            }
            last = index;
        }
        return starts;
    }

    /**
     * Returns the events that can come right before an event, on any pass; empty for the first one if nothing jumps
     * back to it.
     *
     * @param event 0-based index of an event that counts
     */
    public SortedSet<Integer> before(int event) {
        return Collections.unmodifiableSortedSet(before.get(event));
    }

    /**
     * Returns the first event that counts in every section; 0-based indices. Sections begin at the start of the tune,
     * where a repeat or a jump leads to, after the place that it leaves, and at endings.
     */
    public SortedSet<Integer> sectionStarts() {
        return Collections.unmodifiableSortedSet(sectionStarts);
    }
}
