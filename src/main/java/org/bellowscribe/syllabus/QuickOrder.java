package org.bellowscribe.syllabus;

import java.util.ArrayList;
import java.util.List;

/** Finds a good order fast: always the tune with the fewest new things, then each tune moved to where it costs less. */
final class QuickOrder {

    private static final int MOST_ROUNDS = 8;

    private final ThingSets sets;
    private final int[] positions;

    /**
     * Creates a search.
     *
     * @param positions the fixed position of each tune from 1, 0 if it is free
     */
    QuickOrder(ThingSets sets, int[] positions) {
        this.sets = sets;
        this.positions = positions;
    }

    /** Returns the order; of equals the tune that is listed first. */
    List<Integer> find() {
        List<Integer> order = greedy();
        long cost = cost(order);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            long before = cost;
            for (int from = 0; from < order.size(); from++) {
                for (int to = 0; to < order.size(); to++) {
                    List<Integer> moved = new ArrayList<>(order);
                    moved.add(to, moved.remove(from));
                    if (from != to && keepsPositions(moved) && cost(moved) < cost) {
                        order = moved;
                        cost = cost(order);
                    }
                }
            }
            if (cost == before) {
                break;
            }
        }
        return order;
    }

    /** Returns the sum of the squares of what is new in each tune of an order. */
    long cost(List<Integer> order) {
        long[] known = sets.none();
        long cost = 0;
        for (int tune : order) {
            long news = sets.news(tune, known);
            cost += news * news;
            sets.add(tune, known);
        }
        return cost;
    }

    private List<Integer> greedy() {
        List<Integer> order = new ArrayList<>();
        long[] known = sets.none();
        while (order.size() < sets.size()) {
            int next = next(order, known);
            order.add(next);
            sets.add(next, known);
        }
        return order;
    }

    private int next(List<Integer> order, long[] known) {
        int best = -1;
        for (int tune = 0; tune < sets.size(); tune++) {
            if (positions[tune] == order.size() + 1) {
                return tune;
            }
            boolean isFree = positions[tune] == 0 && !order.contains(tune);
            if (isFree && (best < 0 || sets.news(tune, known) < sets.news(best, known))) {
                best = tune;
            }
        }
        return best;
    }

    private boolean keepsPositions(List<Integer> order) {
        for (int place = 0; place < order.size(); place++) {
            int position = positions[order.get(place)];
            if (position != 0 && position != place + 1) {
                return false;
            }
        }
        return true;
    }
}
