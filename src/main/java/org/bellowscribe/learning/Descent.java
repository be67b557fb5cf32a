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
 * and so on until that leads nowhere new. Of all points tried on all tunes the best are kept.
 */
final class Descent {

    /** What a point of violation costs against a change of one (see {@link Table#change}). */
    static final double PRICE = 10;

    // The first rounds ask a part of the tunes each, in turn: at least so many tunes, at most so many parts, so often.
    private static final int PART = 5;
    private static final int MOST_PARTS = 4;
    private static final int PASSES = 2;
    private static final int MOST_ROUNDS = 24;
    // Rounds over all tunes that may gain less than one part in so many, in a row.
    private static final int PATIENCE = 6;
    private static final int GAIN = 100;

    private final Table table;
    private final List<Marking> markings;
    private final Planes planes;
    private final PointsProgram program;
    private int[] best;
    private double least = Double.POSITIVE_INFINITY;

    /**
     * Begins a way.
     *
     * @param table the cases with the points to start from
     * @param tunes the tunes, all of whose marks can be kept together
     * @param planes rivals known already
     */
    Descent(Table table, List<TaughtTune> tunes, Planes planes) {
        this.table = table;
        this.planes = planes;
        markings = IntStream.range(0, tunes.size())
                .mapToObj(i -> new Marking(i, tunes.get(i), table))
                .toList();
        program = new PointsProgram(table, PRICE);
        best = table.points();
    }

    /** Goes the whole way from points that nobody has tried; returns what the points to start from make of each tune. */
    List<Marking.Try> start() {
        List<Marking.Try> first = tryOut(best, tune -> true);
        least = objective(best);
        int parts = Math.min(MOST_PARTS, markings.size() / PART);
        for (int round = 0; parts > 1 && round < PASSES * parts; round++) {
            int part = round % parts;
            tryOut(next(), tune -> tune % parts == part);
        }
        goOn();
        return first;
    }

    /** Goes on with all tunes, from what is known. */
    void goOn() {
        Set<List<Integer>> tried = new HashSet<>();
        int idle = 0;
        for (int round = 0; round < MOST_ROUNDS && idle < PATIENCE; round++) {
            int[] points = idle % 2 == 0 ? next() : between(best, next());
            if (!tried.add(Arrays.stream(points).boxed().toList())) {
                return;
            }
            tryOut(points, tune -> true);
            double objective = objective(points);
            idle = objective < least - least / GAIN ? 0 : idle + 1;
            if (objective < least) {
                least = objective;
                best = points;
            }
        }
    }

    /** Returns the best points. */
    int[] points() {
        return best.clone();
    }

    private double objective(int[] points) {
        return table.change(points) + PRICE * planes.violation(points);
    }

    // Points far from all that was tried are often worse than half-way there.
    private static int[] between(int[] from, int[] to) {
        int[] middle = new int[from.length];
        for (int i = 0; i < middle.length; i++) {
            middle[i] = (from[i] + to[i]) / 2;
        }
        return middle;
    }

    private int[] next() {
        List<List<Planes.Plane>> known = planes.byPlace();
        return WholePoints.near(table, PRICE, known, program.solve(known));
    }

    // Tries points on some of the tunes. What the threads bring is taken in tune by tune, in order.
    private List<Marking.Try> tryOut(int[] points, IntPredicate asked) {
        Manner manner = table.manner(points);
        List<Marking.Try> tries = markings.stream()
                .parallel()
                .map(marking -> asked.test(marking.index()) ? marking.tryOut(manner) : Marking.NOT_TRIED)
                .toList();
        boolean changed = false;
        for (int i = 0; i < tries.size(); i++) {
            Marking.@Nullable Found found = tries.get(i).found();
            changed |= found != null && planes.add(i, found);
        }
        if (changed) {
            program.restart();
        }
        return new ArrayList<>(tries);
    }
}
