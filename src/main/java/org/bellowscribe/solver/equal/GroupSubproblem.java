package org.bellowscribe.solver.equal;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The subproblem of a group: what its equal measures would choose for themselves at given multipliers: common marks among those allowed, and a set of
 * measures that differ, each of which chooses for itself. Every set is tried.
 */
final class GroupSubproblem {

    /** A larger group is cut, which keeps the bound true. */
    static final int LARGEST = 6;

    private final Multipliers multipliers;
    private final Kinds kinds;
    private final List<int[]> group;
    private final boolean allMayDiffer;
    private final boolean @Nullable [][] allowed;

    /**
     * Prepares the subproblem of a group.
     *
     * @param group its measures
     * @param isPart true if it has more measures than these
     * @param allowed kinds that the common marks may have [event in order][kind], or null for any
     */
    GroupSubproblem(Multipliers multipliers, List<int[]> group, boolean isPart, boolean @Nullable [][] allowed) {
        this.multipliers = multipliers;
        kinds = multipliers.kinds();
        this.group = group;
        this.allowed = allowed;
        // One measure of a group has the common marks, but it need not be in this part of it.
        allMayDiffer = allowed != null && isPart;
    }

    /**
     * Takes the cheapest choice down and returns its cost; of several as cheap, one near to what the tune plays.
     *
     * @param marks what the tune plays
     */
    long solve(Marks marks, GroupMarks chosen) {
        long best = Long.MAX_VALUE;
        int bestSet = 0;
        int events = group.get(0).length;
        int sets = (1 << group.size()) - (allMayDiffer ? 0 : 1);
        for (int differ = 0; differ < sets; differ++) {
            long cost = price(differ);
            for (int i = 0; i < events; i++) {
                cost += choose(i, differ, marks, chosen.kind());
            }
            if (cost < best) {
                best = cost;
                bestSet = differ;
            }
        }
        for (int i = 0; i < events; i++) {
            choose(i, bestSet, marks, chosen.kind());
        }
        for (int j = 0; j < group.size(); j++) {
            chosen.differs()[group.get(j)[0]] = (bestSet >> j & 1) == 1;
        }
        return best;
    }

    private long price(int differ) {
        long sum = 0;
        for (int j = 0; j < group.size(); j++) {
            sum += (differ >> j & 1) == 1 ? multipliers.restOfPrice(group.get(j)) : 0;
        }
        return sum;
    }

    // The measures in the set choose for themselves, the others choose together.
    private long choose(int i, int differ, Marks marks, int[] chosen) {
        int count = kinds.count(group.get(0)[i]);
        long[] given = new long[count];
        int[] votes = new int[count];
        long cost = 0;
        for (int j = 0; j < group.size(); j++) {
            int e = group.get(j)[i];
            int played = kinds.played(e, marks);
            if ((differ >> j & 1) == 1) {
                chosen[e] = dearest(e, played);
                cost -= multipliers.of(e, chosen[e]);
            } else {
                votes[played]++;
                for (int k = 0; k < count; k++) {
                    given[k] += multipliers.of(e, k);
                }
            }
        }
        int common = common(i, given, votes);
        for (int j = 0; j < group.size(); j++) {
            int e = group.get(j)[i];
            chosen[e] = (differ >> j & 1) == 1 ? chosen[e] : common;
        }
        return cost - given[common];
    }

    private int common(int i, long[] given, int[] votes) {
        int common = -1;
        for (int k = 0; k < given.length; k++) {
            if (allowed == null || allowed[i][k]) {
                boolean first = common < 0 || given[k] > given[common];
                common = first || (given[k] == given[common] && votes[k] > votes[common]) ? k : common;
            }
        }
        return common;
    }

    private int dearest(int e, int first) {
        int dearest = first;
        for (int k = 0; k < kinds.count(e); k++) {
            dearest = multipliers.of(e, k) > multipliers.of(e, dearest) ? k : dearest;
        }
        return dearest;
    }
}
