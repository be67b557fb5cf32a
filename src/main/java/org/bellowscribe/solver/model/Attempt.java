package org.bellowscribe.solver.model;

import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.equal.Alike;
import org.bellowscribe.solver.equal.AlikeSearch;
import org.bellowscribe.solver.equal.EqualGroups;
import org.bellowscribe.solver.search.Answer;
import org.bellowscribe.solver.search.Possibility;
import org.bellowscribe.solver.search.Problem;
import org.bellowscribe.solver.search.Search;
import org.jspecify.annotations.Nullable;

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

    /** Runs the search on the model of a task. */
    public static Attempt of(Task task, Model model) {
        long limit = task.options().cellLimit();
        boolean again = task.options().times() == Times.AGAIN;
        Problem problem = model.problem(again);
        Answer first = solve(problem, limit);
        if (again && !first.isFound()) {
            Problem once = model.problem(false);
            Answer answer = solve(once, limit);
            if (answer.isFound()) {
                return new Attempt(model, once, answer, false, first);
            }
        }
        return new Attempt(model, problem, first, again, first);
    }

    // That there is no answer is found without costs, where nearly nothing is to be searched.
    private static Answer solve(Problem problem, long limit) {
        Possibility possibility = Possibility.of(problem, limit);
        return possibility.isFound() || !possibility.isProved() ? Search.solve(problem, limit) : Answer.NONE;
    }

    /** Returns the marks of a task whose notes are all on the instrument; null if there are none. */
    public static @Nullable Solution solution(Task task) {
        Model model = new Model(task.tune(), task.instrument(), task.wanted(), task.options());
        if (model.firstBlocked() >= 0) {
            return null;
        }
        Attempt attempt = of(task, model);
        return attempt.isFound() ? attempt.marks(task) : null;
    }

    /** Returns the marks that were found. */
    public Solution marks(Task task) {
        return new SolutionBuilder(task.tune(), task.instrument(), model).build(problem, alike(task), again);
    }

    // With equal measures played alike where that is worth it.
    Alike alike(Task task) {
        EqualGroups groups = new EqualMeasures(task.tune(), model).groups(problem.unit());
        return AlikeSearch.improve(problem, groups, task.options().cellLimit(), answer);
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
        return model.firstBlocked() < 0
                && ((task.options().times() == Times.AGAIN && lasts(task, model, true)) || lasts(task, model, false));
    }

    // Without costs: what is not settled so is not found with them either.
    private static boolean lasts(Task task, Model model, boolean again) {
        return Possibility.of(model.problem(again), task.options().cellLimit()).isFound();
    }
}
