package org.bellowscribe.syllabus;

/**
 * A bound on what tunes can cost in any order: every thing that is not known yet is new in just one of them, so the new
 * things of all tunes have a fixed sum. No tune can have more than all its unknown things, nor fewer than those that no
 * other tune has. The squares are least if the sum is spread as evenly as these limits allow.
 */
final class LevelBound {

    private final ThingSets sets;

    LevelBound(ThingSets sets) {
        this.sets = sets;
    }

    /**
     * Returns a sum of squares that no order of the tunes undercuts.
     *
     * @param tunes the tunes that are still to come
     * @param known what is known before them
     */
    long of(int[] tunes, long[] known) {
        long[] once = sets.none();
        long[] twice = sets.none();
        for (int tune : tunes) {
            sets.count(tune, once, twice);
        }
        int[] least = new int[tunes.length];
        int[] most = new int[tunes.length];
        for (int i = 0; i < tunes.length; i++) {
            least[i] = sets.beyond(tunes[i], known, twice);
            most[i] = sets.news(tunes[i], known);
        }
        return squares(least, most, sets.missing(once, known));
    }

    /**
     * Returns the least sum of squares of whole numbers.
     *
     * @param least the least each can be
     * @param most the most each can be
     * @param sum their sum, between that of the least and that of the most
     */
    static long squares(int[] least, int[] most, int sum) {
        int level = 0;
        while (sum(least, most, level + 1) <= sum && level < sum) {
            level++;
        }
        long squares = 0;
        for (int i = 0; i < least.length; i++) {
            long each = Math.max(least[i], Math.min(most[i], level));
            squares += each * each;
        }
        // What is left over raises some from the level by one.
        return squares + (sum - sum(least, most, level)) * (2L * level + 1);
    }

    private static int sum(int[] least, int[] most, int level) {
        int sum = 0;
        for (int i = 0; i < least.length; i++) {
            sum += Math.max(least[i], Math.min(most[i], level));
        }
        return sum;
    }
}
