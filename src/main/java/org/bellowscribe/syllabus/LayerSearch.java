package org.bellowscribe.syllabus;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Finds the least order by dynamic programming over sets of tunes (M. Held and R. Karp, 1962): what a set of tunes teaches
 * does not depend on their order, so of each set only the cheapest order is kept. Sets that cannot lead below an order
 * that is known are left out; if a layer of sets of one size is too large, the least hopeful are, and the bound says what
 * they might have led to.
 */
final class LayerSearch {

    /** More tunes have no number of their own in a set. */
    static final int MOST_TUNES = 62;

    private final ThingSets sets;
    private final int[] positions;
    private final LevelBound bounds;
    private final int widest;
    private long upper;
    private long dropped = Long.MAX_VALUE;

    /** The cheapest order of a set of tunes that is known. */
    private static final class Node {
        private final long set;
        private final long[] known;
        private final long rest;
        private long cost;
        private int last;
        private @Nullable Node before;

        Node(long set, long[] known, long rest) {
            this.set = set;
            this.known = known;
            this.rest = rest;
        }

        long total() {
            return cost + rest;
        }
    }

    /**
     * Creates a search.
     *
     * @param positions the fixed position of each tune from 1, 0 if it is free
     * @param upper the cost of an order that is known
     * @param widest how many sets of one size are looked at, at most
     */
    LayerSearch(ThingSets sets, int[] positions, long upper, int widest) {
        this.sets = sets;
        this.positions = positions;
        this.upper = upper;
        this.widest = widest;
        this.bounds = new LevelBound(sets);
    }

    /** Returns an order that costs less than the one that is known; null if none was found. */
    @Nullable
    List<Integer> find() {
        Node root = new Node(0, sets.none(), 0);
        List<Node> layer = List.of(root);
        for (int depth = 0; depth < sets.size(); depth++) {
            Map<Long, Node> next = new LinkedHashMap<>();
            for (Node node : layer) {
                for (int tune = 0; tune < sets.size(); tune++) {
                    if (isAllowed(node, tune, depth)) {
                        extend(node, tune, next);
                    }
                }
            }
            layer = narrowed(new ArrayList<>(next.values()));
        }
        return layer.isEmpty() ? null : order(layer.get(0));
    }

    /** Returns a cost that no order undercuts which was left out without being worse than the one that is known. */
    long leastLeftOut() {
        return dropped;
    }

    private boolean isAllowed(Node node, int tune, int depth) {
        if ((node.set & 1L << tune) != 0) {
            return false;
        }
        for (int other = 0; other < positions.length; other++) {
            if (positions[other] == depth + 1) {
                return other == tune;
            }
        }
        return positions[tune] == 0;
    }

    private void extend(Node node, int tune, Map<Long, Node> next) {
        long news = sets.news(tune, node.known);
        long cost = node.cost + news * news;
        long set = node.set | 1L << tune;
        Node found = next.get(set);
        if (cost >= upper || (found != null && found.cost <= cost)) {
            return;
        }
        if (found == null) {
            long[] known = sets.with(tune, node.known);
            found = new Node(set, known, bounds.of(others(set), known));
            if (cost + found.rest >= upper) {
                return;
            }
            next.put(set, found);
        }
        found.cost = cost;
        found.last = tune;
        found.before = node;
    }

    private int[] others(long set) {
        int[] others = new int[sets.size() - Long.bitCount(set)];
        int count = 0;
        for (int tune = 0; tune < sets.size(); tune++) {
            if ((set & 1L << tune) == 0) {
                others[count] = tune;
                count++;
            }
        }
        return others;
    }

    private List<Node> narrowed(List<Node> layer) {
        if (layer.size() <= widest) {
            return layer;
        }
        layer.sort(Comparator.comparingLong(Node::total));
        dropped = Math.min(dropped, layer.get(widest).total());
        return layer.subList(0, widest);
    }

    private static List<Integer> order(Node last) {
        ArrayDeque<Integer> order = new ArrayDeque<>();
        for (Node node = last; node.before != null; node = node.before) {
            order.addFirst(node.last);
        }
        return List.copyOf(order);
    }
}
