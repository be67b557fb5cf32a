package org.bellowscribe.learning;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.model.CountedMarks;
import org.jspecify.annotations.Nullable;

/** A marked tune under trial: what the search makes of it in a manner, with its marks and without them. */
final class Marking {

    // Learning asks often; a tune that is not decided by then teaches with what was found.
    private static final long CELL_LIMIT = 20_000;

    /** A tune that was not asked. */
    static final Try NOT_TRIED = new Try(null);

    private final int index;
    private final Task task;
    private final Pins marks;
    private final Table table;

    /**
     * Takes a tune.
     *
     * @param index 0-based place among those marked
     * @param tune the tune, all of whose marks can be kept together
     * @param table the order of the cases
     */
    Marking(int index, TaughtTune tune, Table table) {
        this.index = index;
        this.table = table;
        marks = tune.marks();
        task = bounded(tune.task());
    }

    /** Returns a task with the bound of learning on its work. */
    static Task bounded(Task task) {
        return task.with(
                task.options().withCellLimit(Math.min(CELL_LIMIT, task.options().cellLimit())));
    }

    /**
     * What became of a tune in a manner.
     *
     * @param meant the counts of the cheapest marks that keep what was marked
     * @param rivals the cheapest marks at each place where they are not as they were marked
     */
    record Found(double[] meant, List<Rival> rivals) {}

    /**
     * What a try gave.
     *
     * @param found what became of the tune; null if the search found no marks within its bound on the work
     */
    record Try(@Nullable Found found) {}

    /** Returns the place of the tune among those marked, from 0. */
    int index() {
        return index;
    }

    /** Tries a manner. */
    Try tryOut(Manner manner) {
        return new Try(found(manner));
    }

    private @Nullable Found found(Manner manner) {
        Task now = task.with(task.options().with(manner));
        CountedMarks meant = CountedMarks.of(now.with(marks));
        if (meant == null) {
            return null;
        }
        Task lasting = meant.solution().again() ? now : now.with(now.options().with(Times.ONCE));
        CountedMarks free = CountedMarks.of(lasting);
        if (free == null) {
            return null;
        }
        List<Rival> rivals = new ArrayList<>();
        SortedSet<Integer> measures = Agreement.measuresThatDiffer(marks, free.solution());
        if (!measures.isEmpty()) {
            rivals.add(rival(Place.whole(index), measures.size(), free));
        }
        for (int measure : measures) {
            CountedMarks other = CountedMarks.of(lasting.with(marksBut(measure)));
            if (other != null
                    && Agreement.measuresThatDiffer(marks, other.solution()).contains(measure)) {
                rivals.add(rival(new Place(index, measure), 1, other));
            }
        }
        return new Found(table.row(meant.counts()), rivals);
    }

    private Rival rival(Place place, int margin, CountedMarks marked) {
        return new Rival(place, margin, table.row(marked.counts()));
    }

    private Pins marksBut(int measure) {
        return new Pins(marks.list().stream()
                .filter(pin -> task.tune().events().get(pin.event()).measure() != measure)
                .toList());
    }
}
