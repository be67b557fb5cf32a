package org.bellowscribe.syllabus;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * An order of tunes with what is new in each.
 *
 * @param tunes 0-based places of the tunes in the list they were given in, in the order in which to learn them
 * @param news what is new in each, in the same order
 * @param cost sum of the squares of the numbers of new things
 * @param bound no order that keeps the fixed positions costs less; the cost itself if that is proved to be the least
 */
public record LearningOrder(List<Integer> tunes, List<SortedSet<Thing>> news, long cost, long bound) {

    /** Up to so many tunes the least order is always found and proved. */
    public static final int PROVED_TUNES = 20;

    /** The sets of half of that many tunes. */
    private static final int ALL_SETS = 184_756;

    private static final int FEWER_SETS = 1_000;

    /** Copies the lists. */
    public LearningOrder {
        tunes = List.copyOf(tunes);
        news = List.copyOf(news);
    }

    /** Returns true if no order costs less. */
    public boolean isProved() {
        return bound == cost;
    }

    /**
     * Returns the tunes as they are listed.
     *
     * @param things the things of each tune
     */
    public static LearningOrder asListed(List<? extends SortedSet<Thing>> things) {
        List<Integer> order = IntStream.range(0, things.size()).boxed().toList();
        return of(order, things, 0);
    }

    /**
     * Returns the order in which the tunes bring as little new as can be: with the least sum of the squares of the numbers
     * of new things, so that they come evenly. Of orders that cost the same any may come, always the same one.
     *
     * @param things the things of each tune
     * @param positions the fixed position of each tune from 1, 0 if it is free; no position twice or beyond the last
     */
    public static LearningOrder least(List<? extends SortedSet<Thing>> things, List<Integer> positions) {
        ThingSets sets = new ThingSets(things);
        int[] fixed = positions.stream().mapToInt(Integer::intValue).toArray();
        QuickOrder quick = new QuickOrder(sets, fixed);
        List<Integer> order = quick.find();
        long cost = quick.cost(order);
        long bound = new LevelBound(sets).of(IntStream.range(0, sets.size()).toArray(), sets.none());
        if (sets.size() <= LayerSearch.MOST_TUNES) {
            int widest = sets.size() <= PROVED_TUNES ? ALL_SETS : FEWER_SETS;
            LayerSearch search = new LayerSearch(sets, fixed, cost, widest);
            List<Integer> better = search.find();
            order = better == null ? order : better;
            cost = quick.cost(order);
            bound = Math.max(bound, Math.min(cost, search.leastLeftOut()));
        }
        return of(order, things, bound);
    }

    private static LearningOrder of(List<Integer> order, List<? extends SortedSet<Thing>> things, long bound) {
        SortedSet<Thing> known = new TreeSet<>();
        List<SortedSet<Thing>> news = new ArrayList<>();
        long cost = 0;
        for (int tune : order) {
            SortedSet<Thing> each = new TreeSet<>(things.get(tune));
            each.removeAll(known);
            known.addAll(each);
            news.add(Collections.unmodifiableSortedSet(each));
            cost += (long) each.size() * each.size();
        }
        return new LearningOrder(order, news, cost, bound);
    }
}
