package org.bellowscribe.accompaniment;

import java.util.List;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.PitchClass;

/**
 * How well a key suits a melody: the correlation of the time that each pitch class sounds with the probe-tone ratings of
 * listeners (Krumhansl and Kessler, "Tracing the dynamic changes in perceived tonal organization in a spatial
 * representation of musical keys", Psychological Review 89, 1982; the ratings from memory).
 */
final class KeyProfile {

    private static final double[] MAJOR = {6.35, 2.23, 3.48, 2.33, 4.38, 4.09, 2.52, 5.19, 2.39, 3.66, 2.29, 2.88};
    private static final double[] MINOR = {6.33, 2.68, 3.52, 5.38, 2.60, 3.53, 2.54, 4.75, 3.98, 2.69, 3.34, 3.17};

    private KeyProfile() {}

    /** Returns the sum of some stretches of melody. */
    static double[] sum(List<MelodyTones> stretches) {
        double[] sum = new double[12];
        for (MelodyTones tones : stretches) {
            for (int i = 0; i < sum.length; i++) {
                sum[i] += tones.of(PitchClass.of(i));
            }
        }
        return sum;
    }

    /**
     * Returns the correlation with the profile of a tonic, -1 to 1; 0 for a melody without notes.
     *
     * @param weights how much each pitch class is heard, from C
     * @param minor true for the profile of minor keys
     */
    static double correlation(double[] weights, PitchClass tonic, boolean minor) {
        double[] profile = minor ? MINOR : MAJOR;
        double meanWeight = mean(weights);
        double meanRating = mean(profile);
        double both = 0;
        double weightSquares = 0;
        double ratingSquares = 0;
        for (int i = 0; i < weights.length; i++) {
            double weight = weights[i] - meanWeight;
            double rating = profile[PitchClass.of(i).above(tonic)] - meanRating;
            both += weight * rating;
            weightSquares += weight * weight;
            ratingSquares += rating * rating;
        }
        return weightSquares == 0 ? 0 : both / StrictMath.sqrt(weightSquares * ratingSquares);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /** Returns true for the modes with a minor third over their tonic. */
    static boolean isMinor(Mode mode) {
        return switch (mode) {
            case MINOR, DORIAN, PHRYGIAN, LOCRIAN -> true;
            case MAJOR, LYDIAN, MIXOLYDIAN -> false;
        };
    }

    /** Returns how well a key suits a melody, -1 to 1. */
    static double correlation(double[] weights, Key key) {
        return correlation(weights, key.tonic(), isMinor(key.mode()));
    }
}
