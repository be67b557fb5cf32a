package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Rows of choices in which every two values of two factors stand together at least once (a covering array of strength two,
 * built greedily: each row begins with a pair that is still missing and takes for each further factor the value that adds
 * most pairs).
 */
final class PairwiseRows {

    private final int[] values;
    private final Set<String> missing = new TreeSet<>();

    private PairwiseRows(int[] values) {
        this.values = values;
        for (int a = 0; a < values.length; a++) {
            for (int b = a + 1; b < values.length; b++) {
                for (int i = 0; i < values[a]; i++) {
                    for (int j = 0; j < values[b]; j++) {
                        missing.add(pair(a, i, b, j));
                    }
                }
            }
        }
    }

    /**
     * Returns the rows.
     *
     * @param values number of values of each factor
     * @return in each row the 0-based value of each factor
     */
    static List<int[]> of(int... values) {
        PairwiseRows array = new PairwiseRows(values);
        List<int[]> rows = new ArrayList<>();
        while (!array.missing.isEmpty()) {
            rows.add(array.row());
        }
        return rows;
    }

    private static String pair(int a, int i, int b, int j) {
        return a < b ? a + " " + i + " " + b + " " + j : b + " " + j + " " + a + " " + i;
    }

    private int[] row() {
        int[] row = new int[values.length];
        java.util.Arrays.fill(row, -1);
        String[] first = missing.iterator().next().split(" ");
        row[Integer.parseInt(first[0])] = Integer.parseInt(first[1]);
        row[Integer.parseInt(first[2])] = Integer.parseInt(first[3]);
        for (int factor = 0; factor < values.length; factor++) {
            if (row[factor] < 0) {
                row[factor] = best(row, factor);
            }
        }
        for (int a = 0; a < row.length; a++) {
            for (int b = a + 1; b < row.length; b++) {
                missing.remove(pair(a, row[a], b, row[b]));
            }
        }
        return row;
    }

    private int best(int[] row, int factor) {
        int best = 0;
        int most = -1;
        for (int value = 0; value < values[factor]; value++) {
            int added = 0;
            for (int other = 0; other < row.length; other++) {
                added += row[other] >= 0 && missing.contains(pair(factor, value, other, row[other])) ? 1 : 0;
            }
            if (added > most) {
                most = added;
                best = value;
            }
        }
        return best;
    }
}
