package org.bellowscribe.difficulty;

import java.util.Comparator;
import java.util.List;

/**
 * A figure and where it is found.
 *
 * @param value in the unit of its term
 * @param event 0-based index of the event at which the hardest stretch begins; -1 if there is none
 */
record Figure(double value, int event) {

    /** Times that differ less are the same: what is just a stretch apart is never in one. */
    static final double SAME = 1e-9;

    /** Nothing. */
    static final Figure NONE = new Figure(0, -1);

    /** So long is the hardest stretch, in seconds: about four measures of a dance. */
    static final double STRETCH = 8;

    /** Returns the amount a second in the hardest stretch. A tune that is shorter than a stretch counts as one. */
    static Figure aSecond(List<Moment> moments) {
        List<Moment> sorted = moments.stream()
                .sorted(Comparator.comparingDouble(Moment::seconds))
                .toList();
        Figure most = NONE;
        int first = 0;
        for (int last = 0; last < sorted.size(); last++) {
            while (isBefore(sorted.get(first).seconds(), sorted.get(last).seconds())) {
                first++;
            }
            // Summed anew each time, so that equal stretches have equal sums.
            double value = sum(sorted.subList(first, last + 1)) / STRETCH;
            most = value > most.value ? new Figure(value, sorted.get(first).event()) : most;
        }
        return most;
    }

    /**
     * Returns the sum of the amounts of so many moments in a row that have the most.
     *
     * @param count how many in a row
     */
    static Figure inARow(List<Moment> moments, int count) {
        Figure most = NONE;
        for (int last = 0; last < moments.size(); last++) {
            int first = Math.max(0, last - count + 1);
            double value = sum(moments.subList(first, last + 1));
            most = value > most.value ? new Figure(value, moments.get(first).event()) : most;
        }
        return most;
    }

    /** Returns the first note, from a given one on, of the stretch that a note ends. */
    static int first(List<? extends Playing.Played<?>> notes, int from, int last) {
        int first = from;
        while (isBefore(notes.get(first).seconds(), notes.get(last).seconds())) {
            first++;
        }
        return first;
    }

    private static boolean isBefore(double seconds, double last) {
        return seconds <= last - STRETCH + SAME;
    }

    private static double sum(List<Moment> moments) {
        return moments.stream().mapToDouble(Moment::amount).sum();
    }

    /** Returns this figure times a number. */
    Figure times(double factor) {
        return new Figure(value * factor, event);
    }
}
