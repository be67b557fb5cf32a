package org.bellowscribe.solver;

import java.util.List;

/**
 * The marks of a tune: one step for each event, good for every pass.
 *
 * @param steps one step for each event of the tune, in score order
 * @param again true if the marks can be played again and again without resetting the bellows; false if they were found
 *     for one time through
 * @param cost what it costs
 * @param unlike measures that are not played as most of their equals
 */
public record Solution(List<Step> steps, boolean again, Cost cost, List<UnlikePlay> unlike) {

    /** Copies the lists. */
    public Solution {
        steps = List.copyOf(steps);
        unlike = List.copyOf(unlike);
    }
}
