package org.bellowscribe.solver.equal;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which common marks each group of equal measures may have: for each event of its measures, in order, the kinds that are
 * allowed. Narrowed step by step, it parts all answers into smaller and smaller blocks.
 */
final class Block {

    private final EqualGroups groups;
    private final Kinds kinds;
    /** By group [event in order][kind]; null while everything is allowed. */
    private final boolean[] @Nullable [][] byGroup;

    /** Allows everything. */
    Block(EqualGroups groups, Kinds kinds) {
        this.groups = groups;
        this.kinds = kinds;
        byGroup = new boolean[groups.list().size()][][];
    }

    private Block(Block wider, int group, int i, boolean[] wanted) {
        groups = wider.groups;
        kinds = wider.kinds;
        byGroup = wider.byGroup.clone();
        int[] measure = groups.list().get(group).get(0);
        boolean[][] narrower = new boolean[measure.length][];
        for (int at = 0; at < measure.length; at++) {
            narrower[at] = wider.kinds(group, at);
        }
        narrower[i] = wanted;
        byGroup[group] = narrower;
    }

    private boolean[] kinds(int group, int i) {
        boolean[][] given = byGroup[group];
        if (given != null) {
            return given[i];
        }
        boolean[] all = new boolean[kinds.count(groups.list().get(group).get(0)[i])];
        Arrays.fill(all, true);
        return all;
    }

    /** Returns what a group may have [event in order][kind], or null for anything. */
    boolean @Nullable [][] of(int group) {
        return byGroup[group];
    }

    boolean isNarrow(int group) {
        return byGroup[group] != null;
    }

    /** Returns true if a group may have one way to mark it only. */
    boolean isSettled(int group) {
        boolean[][] given = byGroup[group];
        return given != null && Arrays.stream(given).allMatch(ofEvent -> count(ofEvent) == 1);
    }

    private static int count(boolean[] wanted) {
        int count = 0;
        for (boolean one : wanted) {
            count += one ? 1 : 0;
        }
        return count;
    }

    /** Returns for a measure's events, in order, [option][move] true if that is allowed. */
    boolean[][][] keeps(int group, int[] measure) {
        boolean[][][] keeps = new boolean[measure.length][][];
        Arrays.setAll(keeps, i -> kinds.keeps(measure[i], kinds(group, i)));
        return keeps;
    }

    /** Returns true if a measure is played otherwise than is allowed. */
    boolean isLeft(int group, int[] measure, Marks marks) {
        boolean[][] given = byGroup[group];
        for (int i = 0; given != null && i < measure.length; i++) {
            if (!given[i][kinds.played(measure[i], marks)]) {
                return true;
            }
        }
        return false;
    }

    /**
     * Parts this in two where the measures of a group are played most differently: at one event one kind of marks, or any
     * other. Returns nothing if every group has one way to mark it only.
     */
    List<Block> parts(Marks marks) {
        int most = 0;
        int group = -1;
        int at = -1;
        int kind = -1;
        for (int g = 0; g < byGroup.length; g++) {
            List<int[]> keeping = keeping(g, marks);
            for (int i = 0; !keeping.isEmpty() && i < keeping.get(0).length; i++) {
                int[] votes = votes(keeping, i, marks);
                int best = winner(votes);
                if (keeping.size() - votes[best] > most) {
                    most = keeping.size() - votes[best];
                    group = g;
                    at = i;
                    kind = best;
                }
            }
        }
        return group < 0 ? firstFree(marks) : parts(group, at, kind);
    }

    private List<Block> firstFree(Marks marks) {
        for (int g = 0; g < byGroup.length; g++) {
            List<int[]> keeping = keeping(g, marks);
            int[] measure = keeping.isEmpty() ? groups.list().get(g).get(0) : keeping.get(0);
            for (int i = 0; i < measure.length; i++) {
                boolean[] given = kinds(g, i);
                int played = kinds.played(measure[i], marks);
                if (count(given) > 1) {
                    return parts(g, i, given[played] ? played : first(given));
                }
            }
        }
        return List.of();
    }

    private static int first(boolean[] wanted) {
        int k = 0;
        while (!wanted[k]) {
            k++;
        }
        return k;
    }

    private List<int[]> keeping(int group, Marks marks) {
        return groups.list().get(group).stream()
                .filter(measure -> !isLeft(group, measure, marks))
                .toList();
    }

    private int[] votes(List<int[]> measures, int i, Marks marks) {
        int[] votes = new int[kinds.count(measures.get(0)[i])];
        for (int[] measure : measures) {
            votes[kinds.played(measure[i], marks)]++;
        }
        return votes;
    }

    private static int winner(int[] votes) {
        int best = 0;
        for (int k = 1; k < votes.length; k++) {
            best = votes[k] > votes[best] ? k : best;
        }
        return best;
    }

    private List<Block> parts(int group, int i, int kind) {
        boolean[] given = kinds(group, i);
        boolean[] one = new boolean[given.length];
        one[kind] = true;
        boolean[] others = given.clone();
        others[kind] = false;
        return List.of(new Block(this, group, i, one), new Block(this, group, i, others));
    }
}
