package org.bellowscribe.difficulty;

/**
 * Something that counts, where it happens in one playing.
 *
 * @param seconds time since the start
 * @param amount how much it counts, 0 or more
 * @param event 0-based index of the event of the tune
 */
record Moment(double seconds, double amount, int event) {

    private static final double QUARTER_SECOND = 0.25;
    private static final double MOST = 4;

    /**
     * Returns how much something counts by its speed.
     *
     * @param seconds the time that there is for it
     */
    static double bySpeed(double seconds) {
        return seconds <= 0 ? MOST : Math.min(MOST, StrictMath.pow(QUARTER_SECOND / seconds, 2));
    }
}
