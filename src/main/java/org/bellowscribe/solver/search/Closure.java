package org.bellowscribe.solver.search;

import java.util.Arrays;

/**
 * The heaviest closed set of a graph: of items that have weights and ask for one another, a set that asks for nothing
 * outside itself. Found as a least cut (Picard 1976, from memory), the cut by shortest augmenting paths in layers (Dinic
 * 1970, from memory).
 */
final class Closure {

    private static final long ENDLESS = Long.MAX_VALUE / 4;

    private final int source;
    private final int sink;
    private final int[] first;
    private final int[] level;
    private final int[] current;
    private int arcs;
    private int[] next;
    private int[] head;
    private long[] room;

    /** Begins with items that ask for nothing. */
    Closure(long[] weight) {
        int items = weight.length;
        source = items;
        sink = items + 1;
        first = new int[items + 2];
        Arrays.fill(first, -1);
        level = new int[items + 2];
        current = new int[items + 2];
        next = new int[8 * items];
        head = new int[8 * items];
        room = new long[8 * items];
        for (int i = 0; i < items; i++) {
            if (weight[i] > 0) {
                arc(source, i, weight[i]);
            } else if (weight[i] < 0) {
                arc(i, sink, -weight[i]);
            }
        }
    }

    /** Lets an item ask for another one. */
    void ask(int item, int other) {
        arc(item, other, ENDLESS);
    }

    private void arc(int from, int to, long capacity) {
        if (arcs + 2 > next.length) {
            next = Arrays.copyOf(next, 2 * next.length + 2);
            head = Arrays.copyOf(head, 2 * head.length + 2);
            room = Arrays.copyOf(room, 2 * room.length + 2);
        }
        put(from, to, capacity);
        put(to, from, 0);
    }

    private void put(int from, int to, long capacity) {
        head[arcs] = to;
        room[arcs] = capacity;
        next[arcs] = first[from];
        first[from] = arcs++;
    }

    /** Returns for each item true if it is in the set; of sets as heavy the smallest. */
    boolean[] heaviest() {
        while (layer()) {
            System.arraycopy(first, 0, current, 0, first.length);
            while (push(source, ENDLESS) > 0) {}
        }
        boolean[] in = new boolean[source];
        for (int i = 0; i < in.length; i++) {
            in[i] = level[i] >= 0;
        }
        return in;
    }

    // Distances from the source where there is room; false if the sink is cut off.
    private boolean layer() {
        Arrays.fill(level, -1);
        int[] queue = new int[level.length];
        int read = 0;
        int written = 1;
        queue[0] = source;
        level[source] = 0;
        while (read < written) {
            int item = queue[read++];
            for (int a = first[item]; a >= 0; a = next[a]) {
                if (room[a] > 0 && level[head[a]] < 0) {
                    level[head[a]] = level[item] + 1;
                    queue[written++] = head[a];
                }
            }
        }
        return level[sink] >= 0;
    }

    private long push(int item, long most) {
        if (item == sink) {
            return most;
        }
        for (; current[item] >= 0; current[item] = next[current[item]]) {
            int a = current[item];
            if (room[a] > 0 && level[head[a]] == level[item] + 1) {
                long pushed = push(head[a], Math.min(most, room[a]));
                if (pushed > 0) {
                    room[a] -= pushed;
                    room[a ^ 1] += pushed;
                    return pushed;
                }
            }
        }
        return 0;
    }
}
