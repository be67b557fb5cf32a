package org.bellowscribe.solver.equal;

/**
 * A measure that is played otherwise than most of its equals.
 *
 * @param measure first event of the measure
 * @param fellow first event of an equal measure that is played as most are
 * @param dearer points that the tune would cost more with this measure played as its fellows, which stay; more than 0, or {@link
 *     #IMPOSSIBLE} if no such marks were found
 */
public record Outlier(int measure, int fellow, int dearer) {

    /** No marks were found that play the measure as its fellow. */
    public static final int IMPOSSIBLE = -1;
}
