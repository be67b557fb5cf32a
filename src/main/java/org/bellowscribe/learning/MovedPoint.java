package org.bellowscribe.learning;

import java.util.List;
import org.bellowscribe.solver.RuleCase;

/**
 * Points of a case that moved.
 *
 * @param ruleCase the case
 * @param from its points before
 * @param to its points now
 * @param moved places whose marks did not come out before and do now, that the move brings nearer; what it helps most first
 * @param against places whose marks do not come out, that the move takes further away; what it harms most first
 */
public record MovedPoint(RuleCase ruleCase, int from, int to, List<String> moved, List<String> against) {

    /** Copies the lists. */
    public MovedPoint {
        moved = List.copyOf(moved);
        against = List.copyOf(against);
    }
}
