package org.bellowscribe.learning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.bellowscribe.solver.Manner;
import org.jspecify.annotations.Nullable;

/**
 * The way to the points: search with the points at hand, add the rivals found, take the best points for all rivals so far,
 * until nothing new is found. Of all points tried the best are kept.
 */
final class Descent {

    // What a point of violation costs against a change of one (see Table).
    static double PRICE = Double.parseDouble(System.getProperty("price","10"));
    // The first rounds ask a part of the tunes each, in turn: at least so many tunes, at most so many parts, so often.
    private static final int PART = 5;
    private static final int MOST_PARTS = 4;
    private static final int PASSES = 2;
    private static final int MOST_ROUNDS = Integer.getInteger("rounds",25);

    private final Table table;
    private final List<Marking> markings;
    private final Planes planes;
    private final PointsProgram program;
    private final Set<List<Integer>> tried = new HashSet<>();
    private int[] best;
    private double least = Double.POSITIVE_INFINITY;
    private List<Marking.@Nullable Found> after = List.of();

    private Descent(Table table, List<Marking> markings) {
        this.table = table;
        this.markings = markings;
        planes = new Planes(table, markings.size());
        program = new PointsProgram(table, PRICE);
        best = table.points();
    }

    /** The points found, and all rivals met on the way. */
    record Ground(int[] points, Planes planes, List<Marking.@Nullable Found> before, List<Marking.@Nullable Found> after) {}

    static Ground run(Table table, List<MarkedTune> tunes) {
        List<Marking> markings = new ArrayList<>();
        for (int i = 0; i < tunes.size(); i++) {
            markings.add(new Marking(i, tunes.get(i), table));
        }
        return new Descent(table, markings).run();
    }

    private Ground run() {
        int[] points = table.points();
        List<Marking.@Nullable Found> before = tryOut(points, i -> true);
        keepIfBetter(points, before);
        int parts = Math.max(1, Math.min(MOST_PARTS, markings.size() / PART));
        for (int round = 0; round < MOST_ROUNDS; round++) {
            long t0 = System.nanoTime();
            points = next();
            if (!tried.add(asList(points))) { System.err.println("visited"); if (parts == 1) break; parts = 1; tried.clear(); }
            int part = round % parts;
            int all = parts;
            long t1 = System.nanoTime();
            List<Marking.@Nullable Found> now = tryOut(points, i -> i % all == part);
            if (parts == 1) { keepIfBetter(points, now); }
            System.err.printf("round %d parts %d objective %.1f places %d qp %.1f search %.1f%n", round, parts, objective(points), planes.places().size(), (t1-t0)/1e9, (System.nanoTime()-t1)/1e9);
            if (round + 1 >= PASSES * parts) {
                parts = 1;
            }
        }
        return new Ground(best, planes, before, after);
    }

    private double objective(int[] points) {
        return table.change(points) + PRICE * planes.violation(points);
    }

    private void keepIfBetter(int[] points, List<Marking.@Nullable Found> now) {
        double objective = objective(points);
        if (objective < least) {
            least = objective;
            best = points;
            after = now;
        }
    }

    private int[] next() {
        List<List<double[]>> differences = planes.differences();
        return WholePoints.near(table, PRICE, differences, program.solve(differences));
    }

    // Tries points on some of the tunes.
    private List<Marking.@Nullable Found> tryOut(int[] points, IntPredicate asked) {
        Manner manner = table.manner(points);
        List<Marking.@Nullable Found> found = IntStream.range(0, markings.size())
                .parallel()
                .mapToObj(i -> new One(asked.test(i) ? markings.get(i).tryOut(manner) : null))
                .toList()
                .stream()
                .map(One::found)
                .collect(ArrayList::new, ArrayList::add, ArrayList::addAll);
        boolean changed = false;
        for (int i = 0; i < found.size(); i++) {
            Marking.Found one = found.get(i);
            changed |= one != null && planes.add(i, one);
        }
        if (changed) {
            program.restart();
        }
        return found;
    }

    /** One tune's outcome. */
    private record One(Marking.@Nullable Found found) {}

    private static List<Integer> asList(int[] points) {
        return Arrays.stream(points).boxed().toList();
    }
}
