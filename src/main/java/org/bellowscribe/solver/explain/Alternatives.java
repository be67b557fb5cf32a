package org.bellowscribe.solver.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bellowscribe.solver.Apart;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Task;
import org.jspecify.annotations.Nullable;

/**
 * Looks for other good ways to play a tune: solves it with other points for some rule, and with points against what the
 * ways found so far do. Of each the directions and buttons are kept and all else is decided anew with the true points. Of
 * what is different enough the cheapest is taken first. They are good and different, but not proved to be the best.
 */
public final class Alternatives {

    /** Percent of the struck notes that must have another direction or another button than in each way shown. */
    public static final int CLEARLY = 15;

    /** The most ways that can be asked for. */
    public static final int MOST = 9;

    // So much more a rule charges where a way is to be found that spares what it charges for.
    private static final int WEIGHT = 3;
    private static final int[] AWAY = {1, 2, 3, 4, 6, 8, 12};
    // What costs more than so many times the least is no good way any more.
    private static final int GOOD = 2;

    // States to expand for one way: nothing is proved here, and more found none that were clearly better.
    private static final long CELLS = 100_000;

    private final Task task;
    private final List<Solution> shown = new ArrayList<>();
    private final List<Alternative> found = new ArrayList<>();

    private Alternatives(Task task, Solution first) {
        this.task = task.with(
                task.options().withCellLimit(Math.min(CELLS, task.options().cellLimit())));
        shown.add(first);
    }

    /**
     * Returns other ways, the cheapest first, none dearer than twice the solution; fewer than asked for if no more were
     * found.
     *
     * @param task the task
     * @param first its solution
     * @param count how many, at most {@link #MOST}
     */
    public static List<Alternative> of(Task task, Solution first, int count) {
        Alternatives search = new Alternatives(task, first);
        List<Alternative> weighted = search.weighted();
        weighted.sort(Comparator.comparingInt(way -> way.solution().cost().total()));
        for (Alternative way : weighted) {
            if (search.found.size() < count && search.isNew(way.solution())) {
                search.take(way);
            }
        }
        while (search.found.size() < count && search.findAway()) {}
        search.found.sort(Comparator.comparingInt(way -> way.solution().cost().total()));
        return search.found;
    }

    private void take(Alternative way) {
        found.add(way);
        shown.add(way.solution());
    }

    private List<Alternative> weighted() {
        List<Alternative> ways = new ArrayList<>();
        add(ways, "fewer reversals", weighing("bellows-reversal", WEIGHT));
        add(ways, "hand kept still", weighing("hand-shift", WEIGHT));
        add(ways, "kept on one row", weighing("row-change", WEIGHT));
        add(ways, "rows changed freely", weighing("row-change", 0));
        add(ways, "hand moved freely", weighing("hand-shift", 0));
        add(ways, "fewer air presses", weighing("air-press", WEIGHT));
        add(ways, "fuller left hand", weighing("left-hand-silent", WEIGHT));
        return ways;
    }

    private void add(List<Alternative> ways, String made, SolverOptions options) {
        Solution way = finished(options);
        if (way != null) {
            ways.add(new Alternative(way, made, different(way, shown.get(0))));
        }
    }

    private SolverOptions weighing(String rule, int times) {
        SolverOptions options = task.options();
        Manner manner = options.manner();
        Map<String, Points> byRule = new TreeMap<>(manner.byRule());
        Map<String, Integer> points = new TreeMap<>();
        byRule.getOrDefault(rule, Points.NONE).byCase().forEach((name, value) -> points.put(name, value * times));
        byRule.put(rule, new Points(points));
        return options.with(new Manner(manner.id(), manner.summary(), manner.remarks(), byRule, manner.patterns()));
    }

    private boolean findAway() {
        for (int points : AWAY) {
            Solution way = finished(task.options().with(new Apart(shown, points)));
            if (way != null && isNew(way)) {
                take(new Alternative(way, "away from the others", different(way, shown.get(0))));
                return true;
            }
        }
        return false;
    }

    // The directions and buttons of a search, and all else by the true points.
    private @Nullable Solution finished(SolverOptions options) {
        Solution rough = Solver.attempt(task.with(options));
        if (rough == null) {
            return null;
        }
        List<Pin> pins = new ArrayList<>(task.options().pins().list());
        for (Step step : rough.steps()) {
            Pin pin = Pin.at(step.event().index()).direction(step.direction());
            for (int i = 0; i < step.buttons().size(); i++) {
                pin = pin.button(i, step.buttons().get(i).id());
            }
            pins.add(pin);
        }
        Solution way = Solver.attempt(task.with(new Pins(pins)));
        return way == null || isGood(way) ? way : null;
    }

    private boolean isGood(Solution way) {
        Solution first = shown.get(0);
        return way.again() == first.again()
                && way.cost().total() <= GOOD * first.cost().total();
    }

    private boolean isNew(Solution way) {
        return shown.stream().allMatch(other -> different(way, other) >= CLEARLY);
    }

    private static int different(Solution one, Solution other) {
        int notes = 0;
        int different = 0;
        for (int e = 0; e < one.steps().size(); e++) {
            Step a = one.steps().get(e);
            Step b = other.steps().get(e);
            boolean note = !a.event().isRest();
            notes += note ? 1 : 0;
            different += note && (a.direction() != b.direction() || !a.buttons().equals(b.buttons())) ? 1 : 0;
        }
        return notes == 0 ? 0 : 100 * different / notes;
    }
}
