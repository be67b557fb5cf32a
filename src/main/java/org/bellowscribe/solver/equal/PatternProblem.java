package org.bellowscribe.solver.equal;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.solver.search.Answer;
import org.bellowscribe.solver.search.Move;
import org.bellowscribe.solver.search.Option;
import org.bellowscribe.solver.search.Problem;

/**
 * The problem when it is given which marks some measures should carry. A measure then either keeps to them or pays, and
 * this is exact: beside its own options, which pay, each of its events has those that keep to the marks, and the two kinds
 * never meet inside a measure.
 */
final class PatternProblem {

    /** More than any cost. */
    static final int FORBIDDEN = Problem.NEVER;

    /**
     * A measure and the marks it should carry.
     *
     * @param events its events in order
     * @param price what it pays otherwise
     * @param keeps for its events [in order][option][move] true if that keeps to the marks
     */
    record Wanted(int[] events, int price, boolean[][][] keeps) {}

    /** An option that keeps to the marks: the option it is made of, and for each move the move it is made of. */
    private record Kept(int option, int[] moves) {}

    private final Problem problem;
    private final List<List<Option>> options = new ArrayList<>();
    private final List<List<Kept>> kept = new ArrayList<>();
    /** For each event a number of the measure to which it belongs; 0 for one that may carry any marks. */
    private final int[] measureOf;

    private final List<Wanted> measures;

    PatternProblem(Problem problem, List<Wanted> measures) {
        this.problem = problem;
        this.measures = List.copyOf(measures);
        measureOf = new int[problem.size()];
        for (List<Option> own : problem.options()) {
            options.add(new ArrayList<>(own));
            kept.add(List.of());
        }
        for (int m = 0; m < measures.size(); m++) {
            Wanted measure = measures.get(m);
            charge(measure.events()[0], measure.price());
            for (int i = 0; i < measure.events().length; i++) {
                measureOf[measure.events()[i]] = m + 1;
                keep(measure.events()[i], measure.keeps()[i]);
            }
        }
    }

    private void charge(int e, int points) {
        options.get(e)
                .replaceAll(option -> new Option(option.sign(), Math.addExact(option.cost(), points), option.moves()));
    }

    private void keep(int e, boolean[][] keeps) {
        List<Kept> keeping = new ArrayList<>();
        List<Option> given = problem.options().get(e);
        for (int c = 0; c < given.size(); c++) {
            int[] same = new int[keeps[c].length];
            List<Move> moves = new ArrayList<>();
            for (int m = 0; m < same.length; m++) {
                if (keeps[c][m]) {
                    same[moves.size()] = m;
                    moves.add(given.get(c).moves().get(m));
                }
            }
            if (!moves.isEmpty()) {
                keeping.add(new Kept(c, same));
                options.get(e).add(new Option(given.get(c).sign(), given.get(c).cost(), moves));
            }
        }
        kept.set(e, keeping);
    }

    /** Returns the problem to solve. */
    Problem stated() {
        return problem.with(options, pairs());
    }

    private List<int[][]> pairs() {
        List<int[][]> pairs = new ArrayList<>();
        for (int k = 0; k < problem.edges().size(); k++) {
            pairs.add(pairs(problem.edges().get(k), problem.pairs().get(k)));
        }
        return pairs;
    }

    private int[][] pairs(Problem.Edge edge, int[][] given) {
        int from = edge.from();
        int to = edge.to();
        if (measureOf[from] == 0 && measureOf[to] == 0) {
            return given;
        }
        boolean together = measureOf[from] != 0 && measureOf[from] == measureOf[to] && from < to;
        int[][] points = new int[options.get(from).size()][options.get(to).size()];
        for (int i = 0; i < points.length; i++) {
            for (int j = 0; j < points[i].length; j++) {
                boolean apart = together && isKept(from, i) != isKept(to, j);
                points[i][j] = apart ? FORBIDDEN : given[option(from, i)][option(to, j)];
            }
        }
        return points;
    }

    private boolean isKept(int e, int c) {
        return c >= problem.options().get(e).size();
    }

    private Kept kept(int e, int c) {
        return kept.get(e).get(c - problem.options().get(e).size());
    }

    private int option(int e, int c) {
        return isKept(e, c) ? kept(e, c).option() : c;
    }

    /**
     * Returns marks of the given problem as the stated one numbers its options and moves; a measure that keeps to what it
     * should carry does not pay.
     */
    Marks stated(Marks given) {
        Marks stated = new Marks(given.option().clone(), given.move().clone());
        for (Wanted measure : measures) {
            List<int[]> keeping = new ArrayList<>();
            for (int e : measure.events()) {
                int[] one = keeping(e, given.option()[e], given.move()[e]);
                if (one.length > 0) {
                    keeping.add(one);
                }
            }
            for (int i = 0; keeping.size() == measure.events().length && i < keeping.size(); i++) {
                stated.option()[measure.events()[i]] = keeping.get(i)[0];
                stated.move()[measure.events()[i]] = keeping.get(i)[1];
            }
        }
        return stated;
    }

    // The option and the move that keep to the marks; nothing if the given ones do not.
    private int[] keeping(int e, int c, int m) {
        int own = problem.options().get(e).size();
        for (int k = own; k < options.get(e).size(); k++) {
            int[] moves = kept(e, k).moves();
            for (int i = 0;
                    kept(e, k).option() == c
                            && i < options.get(e).get(k).moves().size();
                    i++) {
                if (moves[i] == m) {
                    return new int[] {k, i};
                }
            }
        }
        return new int[0];
    }

    /** Returns an answer that was found as the given problem numbers its options and moves. */
    Marks marks(Answer answer) {
        Marks chosen = Marks.of(answer);
        int[] option = new int[problem.size()];
        int[] move = new int[problem.size()];
        for (int e = 0; e < option.length; e++) {
            int c = chosen.option()[e];
            option[e] = option(e, c);
            move[e] = isKept(e, c) ? kept(e, c).moves()[chosen.move()[e]] : chosen.move()[e];
        }
        return new Marks(option, move);
    }
}
