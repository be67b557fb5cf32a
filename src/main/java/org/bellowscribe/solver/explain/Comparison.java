package org.bellowscribe.solver.explain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.bellowscribe.solver.Cost;

/**
 * How much more one way of playing costs than another, rule by rule.
 *
 * @param points points more; negative if less
 * @param proved true if both costs are proved to be the least, so that the difference is exact
 * @param byRule by rule id, what it charges more or less; only rules with a difference in points. The points add up to
 *     the whole difference
 */
public record Comparison(int points, boolean proved, SortedMap<String, Difference> byRule) {

    /**
     * What one rule charges more.
     *
     * @param points points more; negative if less
     * @param times how many times more; negative if fewer
     */
    public record Difference(int points, int times) {}

    /** Copies the map. */
    public Comparison {
        byRule = Collections.unmodifiableSortedMap(new TreeMap<>(byRule));
    }

    /** Returns how much more one cost is than another. */
    public static Comparison of(Cost more, Cost than) {
        SortedMap<String, Difference> byRule = new TreeMap<>();
        TreeSet<String> rules = new TreeSet<>(more.byRule().keySet());
        rules.addAll(than.byRule().keySet());
        for (String rule : rules) {
            int points = of(more.byRule(), rule) - of(than.byRule(), rule);
            if (points != 0) {
                byRule.put(rule, new Difference(points, of(more.timesByRule(), rule) - of(than.timesByRule(), rule)));
            }
        }
        return new Comparison(more.total() - than.total(), more.isProved() && than.isProved(), byRule);
    }

    private static int of(SortedMap<String, Integer> map, String rule) {
        return map.getOrDefault(rule, 0);
    }

    /**
     * Returns the rules in words, the dearest first, such as {@code bellows reversal +6 (2 more), hand shift -8 (1
     * fewer)}; empty if there is no difference.
     */
    public String describe() {
        List<String> rules = new ArrayList<>(byRule.keySet());
        // Stable, so that equal points stay in the order of the ids.
        rules.sort(
                (a, b) -> Integer.compare(difference(b).points(), difference(a).points()));
        List<String> words = new ArrayList<>();
        for (String rule : rules) {
            Difference difference = difference(rule);
            words.add("%s %+d%s".formatted(rule.replace('-', ' '), difference.points(), times(difference.times())));
        }
        return String.join(", ", words);
    }

    private Difference difference(String rule) {
        return byRule.getOrDefault(rule, new Difference(0, 0));
    }

    private static String times(int times) {
        if (times == 0) {
            return "";
        }
        return times > 0 ? " (%d more)".formatted(times) : " (%d fewer)".formatted(-times);
    }
}
