package org.bellowscribe.score;

/**
 * A da capo or dal segno at the end of a measure.
 *
 * @param toStart true for da capo, false for dal segno
 * @param segno label of the segno to go to; empty if the score gives none
 * @param goal where the playing ends after the jump
 * @param withRepeats true if the score says that repeats are taken again
 */
public record Jump(boolean toStart, String segno, Goal goal, boolean withRepeats) {

    /** Where the playing ends after the jump. */
    public enum Goal {
        /** Nothing is said: whatever comes first. */
        OPEN,
        /** At the fine. */
        FINE,
        /** In the coda. */
        CODA
    }

    /** Returns the usual words, such as {@code D.C. al Fine}. */
    @Override
    public String toString() {
        return (toStart ? "D.C." : "D.S.")
                + switch (goal) {
                    case OPEN -> "";
                    case FINE -> " al Fine";
                    case CODA -> " al Coda";
                };
    }
}
