package org.bellowscribe.score;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A repeated section as it is played.
 *
 * @param start 0-based index of its first measure
 * @param end 0-based index of its last measure, endings included
 * @param endings its endings in score order; empty for a plain repeat
 * @param times how often it sounds, where it has no endings; 1 or more
 * @param afterJump true if it is repeated also after a da capo or dal segno
 * @param inner repeated sections inside it, in score order
 */
record RepeatSection(
        int start, int end, List<Ending> endings, int times, boolean afterJump, List<RepeatSection> inner) {

    /**
     * One ending.
     *
     * @param start 0-based index of its first measure
     * @param end 0-based index of its last measure
     * @param passes numbers of the passes that use it, ascending
     */
    record Ending(int start, int end, List<Integer> passes) {}

    /** Returns the number of each pass in the order of playing; a number without an ending skips them all. */
    List<Integer> passes() {
        TreeSet<Integer> numbers = new TreeSet<>();
        if (endings.isEmpty()) {
            for (int pass = 1; pass <= times; pass++) {
                numbers.add(pass);
            }
        }
        endings.forEach(ending -> numbers.addAll(ending.passes()));
        if (endings.size() == 1) {
            numbers.add(numbers.last() + 1);
        }
        return new ArrayList<>(numbers);
    }

    /** Returns the index of the last measure before the endings. */
    int bodyEnd() {
        return endings.isEmpty() ? end : endings.get(0).start() - 1;
    }
}
