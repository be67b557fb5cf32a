package org.bellowscribe.learning;

import java.util.List;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.RuleCase;

/**
 * What was learned.
 *
 * @param manner the manner to start from with the points found
 * @param moves the points that moved
 * @param unmet marks that do not come out under them
 * @param impossible marks that had to be left out because they cannot be played together, in words
 * @param seen agreement with what was marked, on the tunes learned from
 * @param leftOut agreement on tunes left out: the tunes in some parts, each part marked with points learned from the others
 * @param parts how many parts; 0 if there is one tune only
 */
public record Learned(
        Manner manner,
        List<Move> moves,
        List<Unmet> unmet,
        List<String> impossible,
        Change seen,
        Change leftOut,
        int parts) {

    /** Copies the lists. */
    public Learned {
        moves = List.copyOf(moves);
        unmet = List.copyOf(unmet);
        impossible = List.copyOf(impossible);
    }

    /**
     * Agreement with what was marked.
     *
     * @param before of the marks under the points to start from
     * @param after of the marks under the points found
     */
    public record Change(Agreement before, Agreement after) {}

    /**
     * Points of a case that moved.
     *
     * @param ruleCase the case
     * @param from its points before
     * @param to its points now
     * @param moved places whose marks did not come out before and do now, which the move brings nearer; what it helps most
     *     first
     * @param against places whose marks do not come out, which the move takes further away; what it harms most first
     */
    public record Move(RuleCase ruleCase, int from, int to, List<String> moved, List<String> against) {

        /** Copies the lists. */
        public Move {
            moved = List.copyOf(moved);
            against = List.copyOf(against);
        }
    }

    /**
     * Marks of a measure that do not come out although all else that was marked stands.
     *
     * @param place the tune and the measure
     * @param points by how many points other marks are cheaper there; 0 if they cost the same
     * @param why why no points at all make the marks cheapest; empty if some would, but other marks count more
     */
    public record Unmet(String place, int points, String why) {}
}
