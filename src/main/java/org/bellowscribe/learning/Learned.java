package org.bellowscribe.learning;

import java.util.List;
import org.bellowscribe.solver.Manner;

/**
 * What was learned.
 *
 * @param manner the manner with the points found
 * @param moves the points that moved
 * @param unmet what does not come out under them
 * @param before how far the marks of the manner to start from agree with what was marked
 * @param after how far the marks of the manner found agree
 */
public record Learned(Manner manner, List<MovedPoint> moves, List<Unmet> unmet, Agreement before, Agreement after) {

    /** Copies the lists. */
    public Learned {
        moves = List.copyOf(moves);
        unmet = List.copyOf(unmet);
    }
}
