package org.bellowscribe.solver.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The flow of a tune: which event can follow which. The first visit of each event in play order gives a tree; all other
 * flow edges are jumps. Places (2e before event e, 2e+1 after it) that an edge joins are one class and share one opening.
 * A class that a jump touches, and the start, is an anchor: openings are counted from the last anchor passed.
 */
final class Graph {

    final int size;
    /** Events by first visit. */
    final int[] visit;
    /** Event before at the first visit; -1 at the start. */
    final int[] parent;
    /** Edge from the parent. */
    final int[] treeEdge;

    final List<List<Integer>> children = new ArrayList<>();
    /** All jump edges, and those that leave each event. */
    final List<Integer> jumps = new ArrayList<>();

    final List<List<Integer>> jumpsFrom = new ArrayList<>();
    /** Class of each place. */
    final int[] place;

    final boolean[] anchor;
    final int start;
    /** Last event in play order. */
    final int last;
    /** For each event the anchor from which its openings are counted. */
    final int[] reference;
    /** Classes that are anchors, by first visit, the start first. */
    final List<Integer> anchors = new ArrayList<>();
    /** For each class its index among the anchors, or -1. */
    final int[] anchorIndex;
    /** For each anchor (by index) the index of the anchor before it; -1 for the start. */
    final List<Integer> anchorParent = new ArrayList<>();
    /** Stretch between anchors to which an event belongs, and the first event of each stretch. */
    final int[] stretch;

    final List<Integer> firsts = new ArrayList<>();

    Graph(Problem problem) {
        size = problem.size();
        visit = new int[size];
        parent = new int[size];
        treeEdge = new int[size];
        Arrays.fill(parent, -1);
        Arrays.fill(treeEdge, -1);
        for (int e = 0; e < size; e++) {
            children.add(new ArrayList<>());
            jumpsFrom.add(new ArrayList<>());
        }
        growTree(problem);
        place = joinPlaces(problem);
        start = place[2 * visit[0]];
        last = problem.order().get(problem.order().size() - 1);
        anchor = new boolean[2 * size];
        anchor[start] = true;
        jumps.forEach(k -> anchor[place[2 * problem.edges().get(k).to()]] = true);
        anchorIndex = new int[2 * size];
        Arrays.fill(anchorIndex, -1);
        reference = new int[size];
        stretch = new int[size];
        cutStretches();
    }

    private void growTree(Problem problem) {
        Map<Problem.Edge, Integer> ids = new HashMap<>();
        for (int k = 0; k < problem.edges().size(); k++) {
            ids.put(problem.edges().get(k), k);
        }
        boolean[] seen = new boolean[size];
        boolean[] inTree = new boolean[problem.edges().size()];
        int visited = 0;
        for (int i = 0; i < problem.order().size(); i++) {
            int event = problem.order().get(i);
            if (seen[event]) {
                continue;
            }
            seen[event] = true;
            visit[visited++] = event;
            if (i > 0) {
                int before = problem.order().get(i - 1);
                parent[event] = before;
                treeEdge[event] = ids.getOrDefault(new Problem.Edge(before, event), -1);
                inTree[treeEdge[event]] = true;
                children.get(before).add(event);
            }
        }
        for (int k = 0; k < inTree.length; k++) {
            if (!inTree[k]) {
                jumps.add(k);
                jumpsFrom.get(problem.edges().get(k).from()).add(k);
            }
        }
    }

    private int[] joinPlaces(Problem problem) {
        int[] root = new int[2 * size];
        Arrays.setAll(root, i -> i);
        for (Problem.Edge edge : problem.edges()) {
            int a = find(root, 2 * edge.from() + 1);
            int b = find(root, 2 * edge.to());
            root[Math.max(a, b)] = Math.min(a, b);
        }
        int[] classes = new int[2 * size];
        Arrays.setAll(classes, i -> find(root, i));
        return classes;
    }

    private static int find(int[] root, int x) {
        int r = x;
        while (root[r] != r) {
            r = root[r];
        }
        return r;
    }

    private void cutStretches() {
        addAnchor(start, -1);
        for (int e : visit) {
            boolean opensStretch = parent[e] < 0 || anchor[before(e)];
            reference[e] = opensStretch ? before(e) : reference[parent[e]];
            if (opensStretch) {
                stretch[e] = firsts.size();
                firsts.add(e);
            } else {
                stretch[e] = stretch[parent[e]];
            }
            if (opensStretch && anchorIndex[reference[e]] < 0) {
                addAnchor(reference[e], anchorIndex[reference[parent[e]]]);
            }
        }
    }

    private void addAnchor(int placeClass, int before) {
        anchorIndex[placeClass] = anchors.size();
        anchors.add(placeClass);
        anchorParent.add(before);
    }

    /** Returns the index of the anchor from which an event's openings are counted. */
    int referenceIndex(int event) {
        return anchorIndex[reference[event]];
    }

    /** Returns the event by which an anchor is first reached from the one before it. */
    int entry(int index) {
        for (int e : visit) {
            if (after(e) == anchors.get(index) && referenceIndex(e) == anchorParent.get(index)) {
                return e;
            }
        }
        throw new IllegalStateException("The anchor (%d) must have a way in.".formatted(index));
    }

    /** Returns the class of the place before an event. */
    int before(int event) {
        return place[2 * event];
    }

    /** Returns the class of the place after an event. */
    int after(int event) {
        return place[2 * event + 1];
    }
}
