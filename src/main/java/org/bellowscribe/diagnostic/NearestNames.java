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

    /** Returns how many letters must be put in, left out or changed to make one name of the other (Levenshtein). */
    private static int distance(String given, String name) {
        String a = given.toLowerCase(Locale.ROOT);
        String b = name.toLowerCase(Locale.ROOT);
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
