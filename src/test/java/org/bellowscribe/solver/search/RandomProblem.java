package org.bellowscribe.solver.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/** Small problems with loops, endings and tight bellows, the same for the same seed. */
public final class RandomProblem {

    private RandomProblem() {}

    /** Returns a problem whose pressed moves reach some units further than the others. */
    public static Problem of(int seed, int events, int optionsEach, int reach) {
        Random random = new Random(seed);
        List<List<Option>> options = new ArrayList<>();
        for (int e = 0; e < events; e++) {
            List<Option> ofEvent = new ArrayList<>();
            for (int i = 0; i < optionsEach; i++) {
                ofEvent.add(option(random, i, reach));
            }
            options.add(ofEvent);
        }
        List<Integer> order = order(random, events);
        Set<Problem.Edge> edges = new LinkedHashSet<>();
        for (int i = 1; i < order.size(); i++) {
            edges.add(new Problem.Edge(order.get(i - 1), order.get(i)));
        }
        List<int[][]> pairs = new ArrayList<>();
        for (int k = 0; k < edges.size(); k++) {
            int[][] points = new int[optionsEach][optionsEach];
            for (int[] row : points) {
                for (int j = 0; j < row.length; j++) {
                    row[j] = random.nextInt(9);
                }
            }
            pairs.add(points);
        }
        int room = 6 + 2 * reach + random.nextInt(4 * reach);
        boolean again = random.nextBoolean();
        int margin = random.nextInt(3) == 0 ? 3 : 0;
        return new Problem(
                order,
                List.copyOf(edges),
                options,
                pairs,
                Collections.nCopies(events, Zones.FREE),
                0,
                room,
                again,
                margin,
                0,
                room,
                1);
    }

    /** Returns such a problem in which openings towards the ends of the bellows cost up to 4 points. */
    public static Problem charged(int seed, int events, int optionsEach, int reach) {
        Problem free = of(seed, events, optionsEach, reach);
        Random random = new Random(-1 - seed);
        int room = free.highest();
        List<Zones> zones = new ArrayList<>();
        for (int e = 0; e < events; e++) {
            int rate = random.nextInt(3);
            int[] from = {0, 1 + room / 8, 1 + room / 3, 1 + room * 2 / 3, 1 + room * 5 / 6};
            zones.add(new Zones(from, new int[] {2 * rate, rate, 0, rate, 2 * rate}));
        }
        return free.with(free.options(), free.pairs(), zones);
    }

    private static Option option(Random random, int i, int reach) {
        int low = random.nextInt(8);
        List<Move> moves = new ArrayList<>();
        moves.add(new Move(random.nextInt(3), low, low + random.nextInt(2)));
        moves.add(new Move(5 + random.nextInt(5), low, low + reach + random.nextInt(reach)));
        return new Option(i % 2 == 0 ? 1 : -1, random.nextInt(6), moves);
    }

    // One of: straight; all of it twice; a pick-up, then twice; two sections twice each; first and second ending; the
    // last
    // two after a pick-up; a jump back to the beginning after a repeated middle.
    private static List<Integer> order(Random random, int n) {
        int half = n / 2;
        List<Integer> order = new ArrayList<>();
        switch (random.nextInt(8)) {
            case 0 -> run(order, 0, n);
            case 1 -> twice(order, 0, n);
            case 2 -> {
                run(order, 0, 1);
                twice(order, 1, n);
            }
            case 3 -> {
                twice(order, 0, half);
                twice(order, half, n);
            }
            case 4 -> {
                run(order, 0, n - 1);
                run(order, 0, n - 2);
                run(order, n - 1, n);
            }
            case 5 -> {
                run(order, 0, 1);
                twice(order, 1, half);
                twice(order, half, n);
            }
            case 6 -> {
                run(order, 0, 1);
                run(order, 1, n - 1);
                run(order, 1, n - 2);
                run(order, n - 1, n);
            }
            default -> {
                run(order, 0, half);
                twice(order, half, n);
                run(order, 0, half);
            }
        }
        return order;
    }

    private static void twice(List<Integer> order, int from, int to) {
        run(order, from, to);
        run(order, from, to);
    }

    private static void run(List<Integer> order, int from, int to) {
        for (int e = from; e < to; e++) {
            order.add(e);
        }
    }
}
