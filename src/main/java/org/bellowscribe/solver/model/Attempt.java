package org.bellowscribe.solver.model;

import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.equal.Alike;
import org.bellowscribe.solver.equal.AlikeSearch;
import org.bellowscribe.solver.equal.Twins;
import org.bellowscribe.solver.search.Answer;
import org.bellowscribe.solver.search.Problem;
import org.bellowscribe.solver.search.Search;

/**
 * One run of the search on a tune that has a choice for every event: again and again first if that is asked for, then for
 * one time through.
 *
 * @param model the tune on the instrument
 * @param problem the problem of the answer; without an answer, the first that was tried
 * @param answer the answer; without one, why there was none at the first try
 * @param again true if the answer is good for playing again and again
 * @param first the answer to the first try
 */
public record Attempt(Model model, Problem problem, Answer answer, boolean again, Answer first) {

    // Where the start is free, the bellows begin a little under half open: published range one third to one half (W005,
    // "Concertutor", bellows page, concertutor.wordpress.com).
    private static final double USUAL_START = 0.42;
    private static final double THOUSANDTHS = 1000;

    /** Runs the search on the model of a task. */
    public static Attempt of(Task task, Model model) {
        int start = usualStart(task);
        long limit = task.options().cellLimit();
        boolean again = task.options().times() == Times.AGAIN;
        Problem problem = model.problem(again);
        Answer first = Search.solve(problem, limit, start);
        if (again && !first.isFound()) {
            Problem once = model.problem(false);
            Answer answer = Search.solve(once, limit, start);
            if (answer.isFound()) {
                return new Attempt(model, once, answer, false, first);
            }
        }
        return new Attempt(model, problem, first, again, first);
    }

    private static int usualStart(Task task) {
        return (int) (USUAL_START * task.instrument().bellows().capacity() * THOUSANDTHS);
    }

    /** Returns the answer that was found, with equal measures played alike where that is worth it. */
    public Alike alike(Task task) {
        Twins twins = new EqualMeasures(task.tune(), model).twins();
        return AlikeSearch.improve(problem, twins, task.options().cellLimit(), usualStart(task), answer);
    }

    /** Returns true if the tune can be played. */
    public boolean isFound() {
        return answer.isFound();
    }

    /** Returns true if marks for playing again and again were asked for, but were found for one time through only. */
    public boolean isOnceOnly() {
        return isFound() && !first.isFound();
    }

    /** Returns true if a task can be played, whatever stands in the way of it. */
    public static boolean succeeds(Task task) {
        Model model = new Model(task.tune(), task.instrument(), task.wanted(), task.options());
        return model.firstBlocked() < 0 && of(task, model).isFound();
    }
}
