package org.bellowscribe.syllabus;

import java.util.Collection;
import java.util.List;
import java.util.SortedSet;

/** The things of some tunes as bits, so that sets of them are compared fast. */
final class ThingSets {

    private final long[][] bits;
    private final int words;

    /**
     * Numbers the things.
     *
     * @param tunes the things of each tune
     */
    ThingSets(List<? extends SortedSet<Thing>> tunes) {
        List<Thing> numbered =
                tunes.stream().flatMap(Collection::stream).distinct().sorted().toList();
        words = (numbered.size() + Long.SIZE - 1) / Long.SIZE;
        bits = new long[tunes.size()][words];
        for (int tune = 0; tune < tunes.size(); tune++) {
            for (int i = 0; i < numbered.size(); i++) {
                if (tunes.get(tune).contains(numbered.get(i))) {
                    bits[tune][i / Long.SIZE] |= 1L << i % Long.SIZE;
                }
            }
        }
    }

    /** Returns the number of tunes. */
    int size() {
        return bits.length;
    }

    /** Returns the set of no things. */
    long[] none() {
        return new long[words];
    }

    /** Returns how many things of a tune are not known yet. */
    int news(int tune, long[] known) {
        int count = 0;
        for (int word = 0; word < words; word++) {
            count += Long.bitCount(bits[tune][word] & ~known[word]);
        }
        return count;
    }

    /** Returns what is known after a tune. */
    long[] with(int tune, long[] known) {
        long[] all = known.clone();
        add(tune, all);
        return all;
    }

    /** Adds the things of a tune to a set. */
    void add(int tune, long[] known) {
        for (int word = 0; word < words; word++) {
            known[word] |= bits[tune][word];
        }
    }

    /** Adds to {@code twice} the things of a tune that are in {@code once} already, and to {@code once} all of them. */
    void count(int tune, long[] once, long[] twice) {
        for (int word = 0; word < words; word++) {
            twice[word] |= once[word] & bits[tune][word];
            once[word] |= bits[tune][word];
        }
    }

    /** Returns how many things of a tune are in neither of two sets. */
    int beyond(int tune, long[] one, long[] other) {
        int count = 0;
        for (int word = 0; word < words; word++) {
            count += Long.bitCount(bits[tune][word] & ~one[word] & ~other[word]);
        }
        return count;
    }

    /** Returns how many things of a set are not known yet. */
    int missing(long[] set, long[] known) {
        int count = 0;
        for (int word = 0; word < words; word++) {
            count += Long.bitCount(set[word] & ~known[word]);
        }
        return count;
    }
}
