package org.bellowscribe.solver.equal;

import org.bellowscribe.solver.search.Answer;
import org.bellowscribe.solver.search.Problem;
import org.bellowscribe.solver.search.Search;

/**
 * Solves one relaxation after another, knowing what was played before: the multipliers change little from one to the next, so
 * what was cheapest is hardly dearer than the cheapest now, and as a limit it spares most of the search.
 */
final class Known {

    private Answer last = new Answer(null, null, null, Integer.MAX_VALUE, 0, 0, 0);

    /**
     * Returns the cheapest answer to the tune's subproblem, or one that is known if no other was found in time.
     *
     * @param best the best answer to the given problem so far
     */
    Answer solve(PatternProblem tune, Answer best, long cellLimit) {
        Problem stated = tune.stated();
        Answer again = cheaper(stated(tune, stated, best), last.isFound() ? stated(tune, stated, last) : last);
        Answer found = Search.solve(stated, cellLimit, again.cost());
        Answer answer = found.isFound() ? found : proved(again, found);
        Marks marks = tune.marks(answer);
        last = new Answer(marks.option(), marks.move(), answer.openings(), 0, 0, 0, 0);
        return answer;
    }

    private static Answer stated(PatternProblem tune, Problem stated, Answer known) {
        Marks marks = tune.stated(Marks.of(known));
        int cost = stated.cost(marks.option(), marks.move()) + stated.openingCost(known.openingsFound());
        return new Answer(marks.option(), marks.move(), known.openings(), cost, 0, 0, 0);
    }

    private static Answer cheaper(Answer a, Answer b) {
        return b.cost() < a.cost() ? b : a;
    }

    // Nothing below the known answer was found.
    private static Answer proved(Answer known, Answer none) {
        int bound = Math.min(Math.min(none.lowerBound(), known.cost()), Problem.NEVER);
        return new Answer(
                known.option(), known.move(), known.openings(), known.cost(), bound, none.cells(), none.nodes());
    }
}
