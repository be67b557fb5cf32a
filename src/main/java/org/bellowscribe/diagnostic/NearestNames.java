package org.bellowscribe.diagnostic;

import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** Finds, for a name that nothing has, the names a person may have meant. */
public final class NearestNames {

    private static final int MOST = 3;

    private NearestNames() {}

    /**
     * Returns at most three of the known names that differ least from the given one, in the order in which they are
     * known; empty if all differ in more than a third of the letters.
     *
     * @param given the name as the user wrote it; upper and lower case are alike
     * @param known names that exist
     */
    public static List<String> of(String given, Collection<String> known) {
        int tolerance = Math.max(1, given.length() / 3);
        int least = known.stream().mapToInt(name -> distance(given, name)).min().orElse(Integer.MAX_VALUE);
        return least > tolerance
                ? List.of()
                : known.stream()
                        .filter(name -> distance(given, name) == least)
                        .limit(MOST)
                        .toList();
    }

    /**
     * Returns how many letters must be put in, left out, changed, or swapped with their neighbor to make one name of the
     * other (optimal string alignment).
     */
    private static int distance(String given, String name) {
        String a = given.toLowerCase(Locale.ROOT);
        String b = name.toLowerCase(Locale.ROOT);
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : step(cost, a, b, i, j);
            }
        }
        return cost[a.length()][b.length()];
    }

    private static int step(int[][] cost, String a, String b, int i, int j) {
        int change = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int least = Math.min(change, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
    }
}
