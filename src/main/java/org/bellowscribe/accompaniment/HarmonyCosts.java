package org.bellowscribe.accompaniment;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.PitchClass;

/**
 * What a harmony costs in points: melody outside the chord, chords that are rare in the key, changes, and phrases that do
 * not end at home. The figures were weighed on every second tune with chord symbols; between half and double of each the
 * share of measures that are met changes by few percent.
 */
final class HarmonyCosts {

    // A measure whose melody lies wholly outside the chord.
    private static final double OUTSIDE = 32;
    // Tunes change their harmony at the bar line rather than within the measure.
    private static final double CHANGE_AT_BAR = 1.5;
    private static final double CHANGE_WITHIN = 4;
    // A section ends at home, and the dominant leads there.
    private static final double AWAY_AT_END = 4;
    private static final double AWAY_AT_CLOSE = 20;
    private static final double NO_DOMINANT_BEFORE_END = 1.5;
    private static final int DOMINANT = 7;

    private final Tune tune;
    private final List<HarmonySpan> spans;
    private final List<MelodyTones> tones;
    private final List<Key> keys;
    private final List<List<KeyChords.Priced>> chords = new ArrayList<>();
    private final Set<Integer> ends = new TreeSet<>();
    private final int closing;

    /**
     * Weighs the harmonies of a tune.
     *
     * @param roots the roots that may be used
     */
    HarmonyCosts(Tune tune, List<HarmonySpan> spans, Set<PitchClass> roots) {
        this.tune = tune;
        this.spans = spans;
        tones = MelodyTones.of(tune, spans);
        keys = KeyEstimate.of(tune, spans, tones);
        for (HarmonySpan span : spans) {
            chords.add(KeyChords.of(keys.get(span.measure())).stream()
                    .filter(priced -> roots.contains(priced.chord().root()))
                    .toList());
        }
        List<Integer> order = tune.playOrder().measures();
        closing = order.isEmpty() ? -1 : order.get(order.size() - 1);
        for (int i = 0; i < order.size(); i++) {
            if (i == order.size() - 1 || order.get(i + 1) != order.get(i) + 1) {
                ends.add(order.get(i));
            }
        }
    }

    /** Returns the chords that may be meant in a span. */
    List<ChordSymbol> chords(int span) {
        return chords.get(span).stream().map(KeyChords.Priced::chord).toList();
    }

    /** Returns the points of each chord of a span by the melody over it and by how usual it is in the key. */
    double[] own(int span) {
        double[] costs = new double[chords.get(span).size()];
        for (int c = 0; c < costs.length; c++) {
            KeyChords.Priced priced = chords.get(span).get(c);
            costs[c] = share(span) * (OUTSIDE * outside(tones.get(span), priced.chord()) + priced.price());
        }
        return costs;
    }

    private double share(int span) {
        Measure measure = tune.measures().get(spans.get(span).measure());
        return spans.get(span).length().toDouble()
                / measure.time().measureLength().toDouble();
    }

    private static double outside(MelodyTones tones, ChordSymbol chord) {
        double sum = tones.sum();
        double inside = chord.tones().stream().mapToDouble(tones::of).sum();
        return sum == 0 ? 0 : (sum - inside) / sum;
    }

    /** Returns the points of each chord of a span by its place in the section. */
    double[] place(int span) {
        double[] costs = new double[chords.get(span).size()];
        int measure = spans.get(span).measure();
        boolean lastOfMeasure = span + 1 == spans.size() || spans.get(span + 1).measure() != measure;
        for (int c = 0; lastOfMeasure && c < costs.length; c++) {
            int degree = chords.get(span)
                    .get(c)
                    .chord()
                    .root()
                    .above(keys.get(measure).tonic());
            if (ends.contains(measure)) {
                costs[c] = degree == 0 ? 0 : measure == closing ? AWAY_AT_CLOSE : AWAY_AT_END;
            } else if (ends.contains(measure + 1)) {
                costs[c] = degree == DOMINANT ? 0 : NO_DOMINANT_BEFORE_END;
            }
        }
        return costs;
    }

    /** Returns the points of going from a chord of the span before to a chord of a span. */
    double change(int span, ChordSymbol from, ChordSymbol to) {
        boolean within = spans.get(span).onset().isPositive();
        return from.equals(to) ? 0 : within ? CHANGE_WITHIN : CHANGE_AT_BAR;
    }
}
