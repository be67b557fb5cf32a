package org.bellowscribe.solver.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.jspecify.annotations.Nullable;

/**
 * Why something is played at an event and nothing else: the price of every other candidate, each found by solving the
 * whole tune again with that candidate pinned.
 *
 * @param step what is played
 * @param candidates what else could be, the cheapest first, what cannot be played last
 */
public record Explanation(Step step, List<Candidate> candidates) {

    /** States to expand for one candidate: on tight bellows half the time of the marks themselves, at nearly their prices. */
    private static final long CELLS = 200_000;

    /** What stands in the way of a candidate. */
    public enum Obstacle {
        /** Nothing. */
        NONE,
        /** It cannot be played again and again, as the marks can: its price is for one time through. */
        ONCE_ONLY,
        /** A pin of the teacher asks for something else. */
        PIN,
        /** No direction in which the notes can be played has it. */
        MISSING,
        /** The bellows do not last, or the search found no way in which they do. */
        AIR
    }

    /**
     * Something else that could be played.
     *
     * @param pin what it fixes; everything else is decided anew
     * @param obstacle what stands in its way
     * @param comparison its price: the marks with it against the marks as they are; null if it cannot be played
     */
    public record Candidate(
            Pin pin, Obstacle obstacle, @Nullable Comparison comparison) {}

    /** Copies the list. */
    public Explanation {
        candidates = List.copyOf(candidates);
    }

    /**
     * Explains one event. One solve a candidate.
     *
     * @param task the task, with its pins
     * @param solution its solution
     * @param event 0-based index of the event
     */
    public static Explanation of(Task task, Solution solution, int event) {
        Step step = solution.steps().get(event);
        List<Candidate> candidates = new ArrayList<>();
        for (Pin pin : Candidates.of(task, step)) {
            candidates.add(instead(task, solution, pin));
        }
        // Stable: of equal price in the order of the candidates.
        candidates.sort(Comparator.comparingInt(Explanation::order));
        return new Explanation(step, candidates);
    }

    /**
     * Returns what something else would cost. One solve.
     *
     * @param task the task, with its pins
     * @param solution its solution
     * @param pin what is fixed besides
     */
    public static Candidate instead(Task task, Solution solution, Pin pin) {
        // What is marked for one time through is compared with what can be played one time through.
        Task bounded = task.with(
                task.options().withCellLimit(Math.min(CELLS, task.options().cellLimit())));
        return candidate(
                solution.again() ? bounded : bounded.with(bounded.options().with(Times.ONCE)), solution, pin);
    }

    private static int order(Candidate candidate) {
        Comparison comparison = candidate.comparison();
        return comparison == null ? Integer.MAX_VALUE : comparison.points();
    }

    private static Candidate candidate(Task task, Solution solution, Pin pin) {
        Pins pins = task.options().pins();
        Solution with = Solver.attempt(task.with(pins.plus(pin)));
        if (with == null) {
            boolean pinned = !pins.isEmpty() && Solver.attempt(task.with(Pins.NONE.plus(pin))) != null;
            Obstacle missing = Solver.hasChoices(task.with(Pins.NONE.plus(pin))) ? Obstacle.AIR : Obstacle.MISSING;
            return new Candidate(pin, pinned ? Obstacle.PIN : missing, null);
        }
        Obstacle obstacle = solution.again() && !with.again() ? Obstacle.ONCE_ONLY : Obstacle.NONE;
        return new Candidate(pin, obstacle, Comparison.of(with.cost(), solution.cost()));
    }
}
