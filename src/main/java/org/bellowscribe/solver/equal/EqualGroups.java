package org.bellowscribe.solver.equal;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Measures that are written the same, and what it costs to play them differently.
 *
 * @param list groups of equal measures, at least two measures each; a measure is its events in order, as many as its
 *     fellows have, and every two that follow each other there follow each other in the order of play
 * @param signs for each [event][option][move] a number for what stands on the sheet: the same number, the same marks;
 *     used for the events of the groups only
 * @param price points for each measure that is played otherwise than most of its group, 0 or more
 */
public record EqualGroups(List<List<int[]>> list, int[][][] signs, int price) {

    /** Copies the lists. */
    public EqualGroups {
        list = list.stream().map(List::copyOf).toList();
    }

    /** Returns true if there is nothing to weigh. */
    boolean isEmpty() {
        return list.isEmpty() || price == 0;
    }

    /** Returns the signs of a measure. */
    int[] signs(int[] measure, Marks marks) {
        return Arrays.stream(measure)
                .map(e -> signs[e][marks.option()[e]][marks.move()[e]])
                .toArray();
    }

    /** Returns for a measure's events, in order, [option][move] true if that has a pattern's sign. */
    boolean[][][] keeps(int[] measure, int[] pattern) {
        boolean[][][] keeps = new boolean[measure.length][][];
        for (int i = 0; i < measure.length; i++) {
            int[][] given = signs[measure[i]];
            keeps[i] = new boolean[given.length][];
            for (int c = 0; c < given.length; c++) {
                keeps[i][c] = new boolean[given[c].length];
                for (int m = 0; m < given[c].length; m++) {
                    keeps[i][c][m] = given[c][m] == pattern[i];
                }
            }
        }
        return keeps;
    }

    /** Returns for each group the signs that most of its measures have; of those equally frequent the first. */
    int[][] patterns(Marks marks) {
        return list.stream().map(group -> commonest(group, marks)).toArray(int[][]::new);
    }

    private int[] commonest(List<int[]> group, Marks marks) {
        int[] best = {};
        int most = 0;
        Map<List<Integer>, Integer> counts = new HashMap<>();
        for (int[] measure : group) {
            int[] signs = signs(measure, marks);
            counts.merge(Arrays.stream(signs).boxed().toList(), 1, Integer::sum);
        }
        for (int[] measure : group) {
            int[] signs = signs(measure, marks);
            int times = counts.getOrDefault(Arrays.stream(signs).boxed().toList(), 0);
            if (times > most) {
                most = times;
                best = signs;
            }
        }
        return best;
    }

    /** Returns the measures of a group that are played otherwise than most of it. */
    List<int[]> differing(int group, Marks marks) {
        int[] common = commonest(list.get(group), marks);
        return list.get(group).stream()
                .filter(measure -> !Arrays.equals(common, signs(measure, marks)))
                .toList();
    }

    /** Returns the points for all that differ. */
    int cost(Marks marks) {
        int differing = 0;
        for (int g = 0; g < list.size(); g++) {
            differing += differing(g, marks).size();
        }
        return price * differing;
    }
}
