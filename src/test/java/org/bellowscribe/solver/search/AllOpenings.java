package org.bellowscribe.solver.search;

import java.util.Arrays;
import java.util.function.Consumer;

/** Every way to open and close the bellows with the marks of an answer, one amount for each event; for tiny problems. */
final class AllOpenings {

    private static final int UNKNOWN = Integer.MIN_VALUE;

    private final Problem problem;
    private final Answer answer;
    private final Consumer<int[]> found;
    private final int[] openings;

    private AllOpenings(Problem problem, Answer answer, Consumer<int[]> found) {
        this.problem = problem;
        this.answer = answer;
        this.found = found;
        openings = new int[2 * problem.size()];
        Arrays.fill(openings, UNKNOWN);
    }

    /** Hands over each of them, two openings for each event: before and after. */
    static void of(Problem problem, Answer answer, Consumer<int[]> found) {
        AllOpenings all = new AllOpenings(problem, answer, found);
        for (int start = problem.startLow(); start <= problem.startHigh(); start++) {
            all.play(0, start, start);
        }
    }

    private void play(int i, int start, int opening) {
        if (i == problem.order().size()) {
            if (!problem.again() || Math.abs(opening - start) <= problem.margin()) {
                found.accept(openings.clone());
            }
            return;
        }
        int e = problem.order().get(i);
        if (openings[2 * e] != UNKNOWN) {
            if (openings[2 * e] == opening) {
                play(i + 1, start, openings[2 * e + 1]);
            }
            return;
        }
        Option option = problem.options().get(e).get(answer.optionAt(e));
        Move move = option.moves().get(answer.moveAt(e));
        for (int amount = move.low(); amount <= move.high(); amount++) {
            int next = opening + option.sign() * amount;
            if (next >= problem.lowest() && next <= problem.highest()) {
                openings[2 * e] = opening;
                openings[2 * e + 1] = next;
                play(i + 1, start, next);
                openings[2 * e] = UNKNOWN;
                openings[2 * e + 1] = UNKNOWN;
            }
        }
    }
}
