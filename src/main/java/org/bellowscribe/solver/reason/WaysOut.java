package org.bellowscribe.solver.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Tempo;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.model.Attempt;

/** What would make the bellows last: each way out was tried by solving, the smallest change first. */
final class WaysOut {

    // A way out is worth a short search only.
    private static final long CELLS = 50_000;
    private static final double[] FASTER = {1.1, 1.25, 1.5, 2};
    private static final double[] LARGER = {1.25, 1.5, 2, 3};

    private final Task task;

    WaysOut(Task task) {
        SolverOptions options = task.options();
        this.task = task.with(options.withCellLimit(Math.min(CELLS, options.cellLimit())));
    }

    /** Returns a sentence for each way out that works, or one that says what does not. */
    List<String> sentences() {
        List<String> ways = new ArrayList<>();
        SolverOptions options = task.options();
        if (!options.airButton() && lasts(task.with(options.withAirButton(true)))) {
            ways.add("Maybe add air to the marks: with the air button the bellows last.");
        }
        addFaster(ways);
        addLarger(ways);
        if (!task.wanted().isEmpty()
                && lasts(new Task(task.tune(), task.instrument(), List.of(), options, task.moved()))) {
            ways.add("Maybe leave left-hand out of the marks: with the left hand at rest the bellows last.");
        }
        return ways.isEmpty()
                ? List.of(
                        "Maybe another instrument or key: neither twice the speed nor three times the air were found to help.")
                : ways;
    }

    private void addFaster(List<String> ways) {
        for (double times : FASTER) {
            long quarters = Math.round(task.tune().tempo().quartersPerMinute() * times);
            if (lasts(new Task(at(quarters), task.instrument(), task.wanted(), task.options(), task.moved()))) {
                ways.add("Maybe play faster: at %d quarter notes a minute the bellows last.".formatted(quarters));
                return;
            }
        }
    }

    private Tune at(long quartersPerMinute) {
        Tune tune = task.tune();
        return new Tune(
                tune.title(),
                tune.part(),
                tune.measures(),
                tune.events(),
                tune.harmonies(),
                new Tempo(quartersPerMinute, true),
                tune.playOrder(),
                tune.diagnostics());
    }

    private void addLarger(List<String> ways) {
        for (double times : LARGER) {
            if (lasts(new Task(task.tune(), with(times), task.wanted(), task.options(), task.moved()))) {
                ways.add(String.format(
                        Locale.ROOT,
                        "Maybe take larger bellows: with %.2f times the air (capacity %.1f) they last.",
                        times,
                        with(times).bellows().capacity()));
                return;
            }
        }
    }

    private Instrument with(double times) {
        Instrument box = task.instrument();
        Bellows bellows = box.bellows();
        Bellows larger = new Bellows(
                bellows.capacity() * times, bellows.reserve(), bellows.lightAirFlow(), bellows.fullAirFlow());
        return new Instrument(box.id(), box.name(), box.buttons(), box.leftHand(), larger, box.air(), box.alsoFor());
    }

    private static boolean lasts(Task changed) {
        return Attempt.succeeds(changed);
    }
}
