package org.bellowscribe.solver.equal;

import java.util.Arrays;

/**
 * What the subproblems of the groups choose.
 *
 * @param kind for each event the kind of its marks; -1 where no group chooses
 * @param differs for the first event of a measure true if it is to differ
 */
record GroupMarks(int[] kind, boolean[] differs) {

    /** Returns marks of which nothing is chosen. */
    static GroupMarks none(int events) {
        int[] kind = new int[events];
        Arrays.fill(kind, -1);
        return new GroupMarks(kind, new boolean[events]);
    }
}
