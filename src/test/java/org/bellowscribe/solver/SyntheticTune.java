package org.bellowscribe.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;

/** Tunes of any length, the same for the same seed: steps and small leaps in G, about seven notes a measure. */
public final class SyntheticTune {

    private static final String[] SCALE = {"D4", "E4", "F#4", "G4", "A4", "B4", "C5", "D5", "E5", "F#5", "G5"};
    private static final String[] CHORDS = {"G", "G", "C", "D", "Em"};
    private static final int SECTION = 8;
    private static final int EIGHTHS = 8;

    private SyntheticTune() {}

    /**
     * Returns a tune at 120 quarters a minute.
     *
     * @param measures written measures
     * @param repeats true if every eight measures (all, if there are fewer) are repeated
     * @param seed another seed, another tune
     */
    public static Tune of(int measures, boolean repeats, int seed) {
        Random random = new Random(seed);
        List<String> text = new ArrayList<>();
        int degree = 3;
        for (int m = 0; m < measures; m++) {
            String chord = m == 0 || m == measures - 1 ? "G" : CHORDS[random.nextInt(CHORDS.length)];
            StringBuilder measure = new StringBuilder("[" + chord + "]");
            for (int at = 0; at < EIGHTHS; ) {
                int length = at % 2 == 0 && random.nextInt(7) == 0 ? 2 : 1;
                measure.append(' ').append(SCALE[degree]).append(length == 2 ? "" : "*1/2");
                at += length;
                degree = Math.max(0, Math.min(SCALE.length - 1, degree + random.nextInt(5) - 2));
            }
            text.add(measure.toString());
        }
        return TuneText.of(String.join(" | ", text), 120, order(measures, repeats));
    }

    private static List<Integer> order(int measures, boolean repeats) {
        List<Integer> order = new ArrayList<>();
        for (int from = 0; from < measures; from += SECTION) {
            for (int pass = 0; pass < (repeats ? 2 : 1); pass++) {
                for (int m = from; m < Math.min(measures, from + SECTION); m++) {
                    order.add(m);
                }
            }
        }
        return order;
    }
}
