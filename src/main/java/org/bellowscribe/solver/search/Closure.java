package org.bellowscribe.solver.search;

import java.util.Arrays;

/**
 * The heaviest closed set of a graph: of items that have weights and ask for one another, a set that asks for nothing
 * outside itself. Found as a least cut (Picard 1976, from memory), the cut by shortest augmenting paths in layers (Dinic
 * 1970, from memory). Items that ask for each other come together or not at all, so they are one item of the graph.
 */
final class Closure {

    private static final long ENDLESS = Long.MAX_VALUE / 4;

    private final int source;
    private final int sink;
    private final long[] weight;
    /** Of items that are one: the way to the one that stands for all. */
    private final int[] root;

    private final int[] first;
    private final int[] level;
    private final int[] current;
    private int asks;
    private int[] asking;
    private int[] asked;
    private int arcs;
    private int[] next;
    private int[] head;
    private long[] room;

    /** Begins with items that ask for nothing. */
    Closure(long[] weight) {
        int items = weight.length;
        this.weight = weight.clone();
        source = items;
        sink = items + 1;
        root = new int[items];
        Arrays.setAll(root, item -> item);
        first = new int[items + 2];
        Arrays.fill(first, -1);
        level = new int[items + 2];
        current = new int[items + 2];
        asking = new int[items];
        asked = new int[items];
        next = new int[2 * items];
        head = new int[2 * items];
        room = new long[2 * items];
    }

    /** Lets an item ask for another one. */
    void ask(int item, int other) {
        if (asks == asking.length) {
            asking = Arrays.copyOf(asking, 2 * asks + 2);
            asked = Arrays.copyOf(asked, 2 * asks + 2);
        }
        asking[asks] = item;
        asked[asks++] = other;
    }

    /** Lets two items ask for each other. */
    void join(int item, int other) {
        int a = root(item);
        int b = root(other);
        if (a != b) {
            root[b] = a;
            // What is impossible stays so, however many are joined.
            weight[a] = Math.max(-ENDLESS, weight[a] + weight[b]);
        }
    }

    private int root(int item) {
        int at = item;
        while (root[at] != at) {
            root[at] = root[root[at]];
            at = root[at];
        }
        return at;
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
        draw();
        while (layer()) {
            System.arraycopy(first, 0, current, 0, first.length);
            push(source, ENDLESS);
        }
        boolean[] in = new boolean[source];
        for (int i = 0; i < in.length; i++) {
            in[i] = level[root(i)] >= 0;
        }
        return in;
    }

    private void draw() {
        for (int i = 0; i < source; i++) {
            if (root[i] == i && weight[i] > 0) {
                arc(source, i, weight[i]);
            } else if (root[i] == i && weight[i] < 0) {
                arc(i, sink, -weight[i]);
            }
        }
        for (int k = 0; k < asks; k++) {
            int from = root(asking[k]);
            int to = root(asked[k]);
            if (from != to) {
                arc(from, to, ENDLESS);
            }
        }
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

    // Pushes as much as the layers let through, by as many ways as it takes.
    private long push(int item, long most) {
        if (item == sink) {
            return most;
        }
        long sent = 0;
        for (; current[item] >= 0; current[item] = next[current[item]]) {
            int a = current[item];
            if (room[a] > 0 && level[head[a]] == level[item] + 1) {
                long pushed = push(head[a], Math.min(most - sent, room[a]));
                room[a] -= pushed;
                room[a ^ 1] += pushed;
                sent += pushed;
                if (sent == most) {
                    return sent;
                }
            }
        }
        return sent;
    }
}
