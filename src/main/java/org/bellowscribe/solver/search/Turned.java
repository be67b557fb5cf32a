package org.bellowscribe.solver.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A problem turned so that it begins at the first place to which a loop returns. Playing again makes a ring of the order
 * of play, and a ring may be cut anywhere: cut at a loop, the start is an anchor no more, and one opening fewer is to be
 * found by branching. Where the end may miss the start, an event that sounds nothing stands between them and takes up the
 * difference.
 */
final class Turned {

    private Turned() {}

    /** Returns the turned problem, or the same if that is of no use: the start is fixed, or no loop begins elsewhere. */
    static Problem of(Problem problem) {
        int first = firstLoop(problem);
        boolean free = problem.startLow() == problem.lowest() && problem.startHigh() == problem.highest();
        if (first <= 0 || !free) {
            return problem;
        }
        int slack = problem.again() ? problem.margin() : problem.highest() - problem.lowest();
        int begin = problem.order().get(0);
        int end = problem.order().get(problem.order().size() - 1);
        List<Problem.Edge> edges = new ArrayList<>(problem.edges());
        List<int[][]> pairs = new ArrayList<>(problem.pairs());
        List<List<Option>> options = new ArrayList<>(problem.options());
        List<Integer> order =
                new ArrayList<>(problem.order().subList(first, problem.order().size()));
        List<Zones> zones = new ArrayList<>(problem.zones());
        int before = end;
        if (slack > 0) {
            List<Move> any = List.of(new Move(0, 0, slack));
            options.add(List.of(new Option(1, 0, any), new Option(-1, 0, any)));
            zones.add(Zones.FREE);
            before = problem.size();
            order.add(before);
            edges.add(new Problem.Edge(end, before));
            pairs.add(free(options, end, before));
        }
        edges.add(new Problem.Edge(before, begin));
        pairs.add(free(options, before, begin));
        order.addAll(problem.order().subList(0, first));
        return new Problem(
                order,
                edges,
                options,
                pairs,
                zones,
                problem.lowest(),
                problem.highest(),
                true,
                0,
                problem.startLow(),
                problem.startHigh(),
                problem.unit());
    }

    private static int[][] free(List<List<Option>> options, int from, int to) {
        return new int[options.get(from).size()][options.get(to).size()];
    }

    /** Returns what the events of the given problem have in the turned one. */
    static int[] back(int[] byEvent, Problem problem) {
        return Arrays.copyOf(byEvent, problem.size());
    }

    /** Returns the openings of the given problem's places (two for each event) in the turned one. */
    static int[] backOpenings(int[] openings, Problem problem) {
        return Arrays.copyOf(openings, 2 * problem.size());
    }

    // The position in the order of play of the first event that is reached from two sides; 0 if that is the start, -1
    // if
    // there is none.
    private static int firstLoop(Problem problem) {
        Set<Integer> reached = new HashSet<>();
        Set<Integer> loops = new HashSet<>();
        problem.edges().forEach(edge -> {
            if (!reached.add(edge.to())) {
                loops.add(edge.to());
            }
        });
        int start = problem.order().get(0);
        if (reached.contains(start)) {
            return 0;
        }
        for (int i = 1; i < problem.order().size(); i++) {
            if (loops.contains(problem.order().get(i))) {
                return i;
            }
        }
        return -1;
    }
}
