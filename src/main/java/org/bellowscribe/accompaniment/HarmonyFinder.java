package org.bellowscribe.accompaniment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.PitchClass;

/**
 * A harmony for a tune without chord symbols: for each span the chords that may be meant, each with the points by which
 * the best harmony of the whole tune gets worse if it stands there (so few changes and closes at phrase ends are counted
 * already). The solver picks one together with the buttons. Equal measures have equal chords and points, but for the
 * measure in which the tune ends.
 */
final class HarmonyFinder {

    // Where the finder is sure it is right far more often than the buttons that lie handy, so another chord is dear: at
    // each
    // stroke three times what the whole harmony loses by it. Next to nothing where two chords suit almost equally.
    private static final double PER_STROKE = 3;
    private static final int MOST_MISFIT = 8;
    private static final int MOST_OPTIONS = 4;

    /** What makes measures alike. */
    private record Content(Key key, Fraction offset, List<Sound> sounds, boolean closing) {}

    private record Sound(Fraction onset, Fraction duration, Object pitches) {}

    private final Tune tune;
    private final List<HarmonySpan> spans;
    private final HarmonyCosts costs;
    private final int closingMeasure;
    private final Map<HarmonySpan, List<HarmonyOption>> options = new LinkedHashMap<>();

    /**
     * Finds the harmony of a tune.
     *
     * @param roots the roots that may be used
     * @param closingMeasure 0-based measure in which the tune ends
     */
    HarmonyFinder(Tune tune, Set<PitchClass> roots, int closingMeasure) {
        this.tune = tune;
        this.closingMeasure = closingMeasure;
        spans = HarmonySpan.of(tune);
        costs = new HarmonyCosts(tune, spans, roots);
        List<List<Integer>> alike = alike();
        double[][] own = new double[spans.size()][];
        double[][] place = new double[spans.size()][];
        for (int i = 0; i < own.length; i++) {
            own[i] = costs.own(i);
            place[i] = costs.place(i);
        }
        level(place, alike);
        for (int i = 0; i < own.length; i++) {
            for (int c = 0; c < own[i].length; c++) {
                own[i][c] += place[i][c];
            }
        }
        double[][] best = new BestHarmony(costs, own).withEach();
        level(best, alike);
        for (int i = 0; i < best.length; i++) {
            options.put(spans.get(i), options(costs.chords(i), best[i]));
        }
    }

    /** Returns what may be meant at a moment, best first; empty if the left hand has no chord of the key. */
    List<HarmonyOption> options(Measure measure, Fraction onset) {
        for (Map.Entry<HarmonySpan, List<HarmonyOption>> entry : options.entrySet()) {
            HarmonySpan span = entry.getKey();
            if (span.measure() == measure.index() && onset.compareTo(span.end()) < 0) {
                return entry.getValue();
            }
        }
        return List.of();
    }

    // The spans at the same place of equal measures, by their indices.
    private List<List<Integer>> alike() {
        Map<Content, Map<Fraction, List<Integer>>> groups = new LinkedHashMap<>();
        Map<Integer, List<Event>> byMeasure = new LinkedHashMap<>();
        tune.events()
                .forEach(event -> byMeasure
                        .computeIfAbsent(event.measure(), m -> new ArrayList<>())
                        .add(event));
        for (int i = 0; i < spans.size(); i++) {
            Measure measure = tune.measures().get(spans.get(i).measure());
            List<Sound> sounds = byMeasure.getOrDefault(measure.index(), List.of()).stream()
                    .map(event -> new Sound(event.onset(), event.duration(), event.pitches()))
                    .toList();
            boolean closing = measure.index() == closingMeasure;
            groups.computeIfAbsent(
                            new Content(measure.key(), measure.beatOffset(), sounds, closing),
                            content -> new LinkedHashMap<>())
                    .computeIfAbsent(spans.get(i).onset(), onset -> new ArrayList<>())
                    .add(i);
        }
        return groups.values().stream()
                .flatMap(group -> group.values().stream())
                .toList();
    }

    // Gives all spans of a group the mean of their points.
    private static void level(double[][] points, List<List<Integer>> groups) {
        for (List<Integer> group : groups) {
            double[] mean = new double[points[group.get(0)].length];
            for (int span : group) {
                for (int c = 0; c < mean.length; c++) {
                    mean[c] += points[span][c] / group.size();
                }
            }
            group.forEach(span -> points[span] = mean.clone());
        }
    }

    private static List<HarmonyOption> options(List<ChordSymbol> chords, double[] points) {
        List<Integer> order = new ArrayList<>();
        for (int c = 0; c < points.length; c++) {
            order.add(c);
        }
        order.sort(Comparator.comparingDouble(c -> points[c]));
        List<HarmonyOption> options = new ArrayList<>();
        for (int c : order) {
            int misfit = (int) Math.round(PER_STROKE * (points[c] - points[order.get(0)]));
            if (misfit <= MOST_MISFIT && options.size() < MOST_OPTIONS) {
                options.add(new HarmonyOption(chords.get(c), misfit));
            }
        }
        return options;
    }
}
