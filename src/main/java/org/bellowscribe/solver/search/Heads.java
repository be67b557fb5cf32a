package org.bellowscribe.solver.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which loop head an event must remember. Inside a loop the state carries the option of the loop's first event, so that
 * the pair cost of the jump back is exact. Where loops overlap, the shortest is remembered; the others are left to
 * branching.
 */
final class Heads {

    private final Problem problem;
    private final int[] head;

    Heads(Problem problem, Graph graph) {
        this.problem = problem;
        head = new int[graph.size];
        Arrays.fill(head, -1);
        List<Map.Entry<Integer, NavigableSet<Integer>>> shortestFirst =
                new ArrayList<>(spans(graph).entrySet());
        shortestFirst.sort(Comparator.comparingInt(span -> span.getValue().size()));
        for (Map.Entry<Integer, NavigableSet<Integer>> entry : shortestFirst) {
            NavigableSet<Integer> span = entry.getValue();
            boolean free = !span.contains(-1) && span.stream().allMatch(e -> head[e] < 0);
            if (free) {
                span.forEach(e -> head[e] = entry.getKey());
            }
        }
    }

    // Events between a loop's head and each jump back to it; -1 is in it if the head is no ancestor.
    private Map<Integer, NavigableSet<Integer>> spans(Graph graph) {
        Map<Integer, NavigableSet<Integer>> spans = new TreeMap<>();
        for (int k : graph.jumps) {
            int h = problem.edges().get(k).to();
            NavigableSet<Integer> span = spans.computeIfAbsent(h, any -> new TreeSet<>());
            int e = problem.edges().get(k).from();
            while (e >= 0 && e != h) {
                span.add(e);
                e = graph.parent[e];
            }
            span.add(e);
        }
        return spans;
    }

    /** Returns the head that an event remembers, or -1. */
    int of(int event) {
        return head[event];
    }

    /** Returns how many contexts an event has: the options of its head, or one. */
    int contexts(int event) {
        return head[event] < 0 ? 1 : problem.options().get(head[event]).size();
    }

    /** Returns the context of an event that follows one with a context, when its own option is known. */
    int context(int event, int contextBefore, int option) {
        return head[event] < 0 ? 0 : head[event] == event ? option : contextBefore;
    }

    /** Returns true if the pair cost of a jump is known exactly at the event it leaves. */
    boolean isExact(int jump) {
        Problem.Edge edge = problem.edges().get(jump);
        return head[edge.from()] == edge.to();
    }
}
