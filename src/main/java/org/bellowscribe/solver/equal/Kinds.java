package org.bellowscribe.solver.equal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Numbers the ways to mark an event: the same number, the same marks, in all measures of a group. Numbers begin at 0 for
 * each event.
 */
final class Kinds {

    private final int[] @Nullable [][] kind;
    private final int[] count;

    /** Numbers the marks of the events of some groups; the others have none. */
    Kinds(EqualGroups groups) {
        kind = new int[groups.signs().length][][];
        count = new int[kind.length];
        for (List<int[]> group : groups.list()) {
            for (int i = 0; i < group.get(0).length; i++) {
                number(group, i, groups.signs());
            }
        }
    }

    private void number(List<int[]> group, int i, int[][][] signs) {
        List<Integer> known = new ArrayList<>();
        for (int[] measure : group) {
            int[][] ofEvent = signs[measure[i]];
            int[][] numbers = new int[ofEvent.length][];
            for (int c = 0; c < numbers.length; c++) {
                numbers[c] = new int[ofEvent[c].length];
                for (int m = 0; m < numbers[c].length; m++) {
                    int sign = ofEvent[c][m];
                    if (!known.contains(sign)) {
                        known.add(sign);
                    }
                    numbers[c][m] = known.indexOf(sign);
                }
            }
            kind[measure[i]] = numbers;
        }
        for (int[] measure : group) {
            count[measure[i]] = known.size();
        }
    }

    /** Returns how many kinds an event has; 0 if it belongs to no group. */
    int count(int e) {
        return count[e];
    }

    /** Returns the kind of an option's move, or -1 if the event belongs to no group. */
    int of(int e, int option, int move) {
        int[][] numbers = kind[e];
        return numbers == null ? -1 : numbers[option][move];
    }

    /** Returns the kind that is played at an event, or -1 if the event belongs to no group. */
    int played(int e, Marks marks) {
        return of(e, marks.option()[e], marks.move()[e]);
    }

    /** Returns [option][move] true if the kind is among those wanted. */
    boolean[][] keeps(int e, boolean[] wanted) {
        int[][] numbers = kind[e];
        if (numbers == null) {
            throw new IllegalStateException("Event %d belongs to no group.".formatted(e));
        }
        boolean[][] keeps = new boolean[numbers.length][];
        for (int c = 0; c < keeps.length; c++) {
            keeps[c] = new boolean[numbers[c].length];
            for (int m = 0; m < keeps[c].length; m++) {
                keeps[c][m] = wanted[numbers[c][m]];
            }
        }
        return keeps;
    }
}
