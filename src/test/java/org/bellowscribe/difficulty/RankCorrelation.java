package org.bellowscribe.difficulty;

import java.util.Arrays;

/** Spearman's rank correlation; equal values share their mean rank. */
final class RankCorrelation {

    private RankCorrelation() {}

    static double of(double[] one, double[] other) {
        double[] a = ranks(one);
        double[] b = ranks(other);
        double mean = (a.length - 1) / 2.0;
        double both = 0;
        double squaresA = 0;
        double squaresB = 0;
        for (int i = 0; i < a.length; i++) {
            both += (a[i] - mean) * (b[i] - mean);
            squaresA += (a[i] - mean) * (a[i] - mean);
            squaresB += (b[i] - mean) * (b[i] - mean);
        }
        return both / Math.sqrt(squaresA * squaresB);
    }

    private static double[] ranks(double[] values) {
        return Arrays.stream(values)
                .map(value -> Arrays.stream(values).filter(each -> each < value).count()
                        + (Arrays.stream(values).filter(each -> each == value).count() - 1) / 2.0)
                .toArray();
    }
}
