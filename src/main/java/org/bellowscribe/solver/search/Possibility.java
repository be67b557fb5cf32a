package org.bellowscribe.solver.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Whether a problem has an answer at all, whatever it costs. Only the bellows matter then: the options of one sign are one,
 * with the amounts of all, and of the search nothing is left but the openings.
 *
 * @param isFound true if there is an answer
 * @param isProved true if that is certain; false if the work was used up before an answer was found
 */
public record Possibility(boolean isFound, boolean isProved) {

    private static final int ANSWER = 1;

    /**
     * Looks for an answer.
     *
     * @param problem the problem
     * @param cellLimit states to expand at most
     */
    public static Possibility of(Problem problem, long cellLimit) {
        Answer answer = Search.solve(withoutCosts(problem), cellLimit, ANSWER);
        return new Possibility(answer.isFound(), answer.isFound() || answer.lowerBound() >= ANSWER);
    }

    /** Returns the problem in which everything is free, with one option for each sign. */
    public static Problem withoutCosts(Problem problem) {
        List<List<Option>> options =
                problem.options().stream().map(Possibility::merged).toList();
        List<int[][]> pairs = problem.edges().stream()
                .map(edge -> new int[options.get(edge.from()).size()]
                        [options.get(edge.to()).size()])
                .toList();
        return problem.with(
                options, pairs, problem.zones().stream().map(each -> Zones.FREE).toList());
    }

    private static List<Option> merged(List<Option> options) {
        List<Option> merged = new ArrayList<>();
        for (int sign : new int[] {1, -1}) {
            List<Move> moves = options.stream()
                    .filter(option -> option.sign() == sign)
                    .flatMap(option -> option.moves().stream())
                    .sorted(Comparator.comparingInt(Move::low))
                    .toList();
            if (!moves.isEmpty()) {
                merged.add(new Option(sign, 0, joined(moves)));
            }
        }
        return merged;
    }

    private static List<Move> joined(List<Move> byLow) {
        List<Move> joined = new ArrayList<>();
        for (Move move : byLow) {
            Move last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            boolean touches = last != null && move.low() <= last.high() + 1;
            if (last != null && touches) {
                joined.set(joined.size() - 1, new Move(0, last.low(), Math.max(last.high(), move.high())));
            } else {
                joined.add(new Move(0, move.low(), move.high()));
            }
        }
        return joined;
    }
}
