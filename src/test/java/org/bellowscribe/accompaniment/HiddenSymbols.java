package org.bellowscribe.accompaniment;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.bellowscribe.Shared;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Harmony;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/** Tunes with chord symbols, without them, and the root that the symbols give each full measure: the one that holds longest. */
final class HiddenSymbols {

    private HiddenSymbols() {}

    /** Returns every second tune of a collection that has chord symbols. */
    static List<Tune> tunes(String collection, int half) throws IOException {
        List<Tune> tunes = new ArrayList<>();
        for (Path file : Shared.scores("corpus/tunes")) {
            String name = String.valueOf(file.getFileName());
            if (name.startsWith(collection)) {
                try {
                    String text = ScoreDocument.decode(Files.readAllBytes(file)).text();
                    tunes.add(ScoreReader.read(text, name, ReadingOptions.DEFAULT));
                } catch (DiagnosedException e) {
                    // A file without a tune.
                }
            }
        }
        tunes.removeIf(tune -> tune.harmonies().isEmpty());
        return IntStream.range(0, tunes.size())
                .filter(i -> i % 2 == half)
                .mapToObj(tunes::get)
                .toList();
    }

    /** Returns a tune without its chord symbols. */
    static Tune hidden(Tune tune) {
        return new Tune(
                tune.title(),
                tune.part(),
                tune.measures(),
                tune.events(),
                List.of(),
                tune.tempo(),
                tune.playOrder(),
                List.of());
    }

    /** Returns the root of each full measure. */
    static Map<Integer, PitchClass> given(Tune tune) {
        Map<Integer, Map<PitchClass, Double>> times = new TreeMap<>();
        for (Measure measure : tune.measures()) {
            if (measure.length().compareTo(measure.time().measureLength()) == 0) {
                Fraction at = Fraction.ZERO;
                ChordSymbol chord = holding(tune, measure.index(), at);
                for (Harmony harmony : tune.harmonies()) {
                    if (harmony.measure() == measure.index()) {
                        add(times, measure, chord, harmony.onset().minus(at));
                        at = harmony.onset();
                        chord = harmony.chord();
                    }
                }
                add(times, measure, chord, measure.length().minus(at));
            }
        }
        return longest(times);
    }

    private static @Nullable ChordSymbol holding(Tune tune, int measure, Fraction onset) {
        ChordSymbol chord = null;
        for (Harmony harmony : tune.harmonies()) {
            boolean begun = harmony.measure() < measure
                    || (harmony.measure() == measure && harmony.onset().compareTo(onset) <= 0);
            chord = begun ? harmony.chord() : chord;
        }
        return chord;
    }

    /** Notes that a chord holds in a measure for a time. */
    static void add(
            Map<Integer, Map<PitchClass, Double>> times, Measure measure, @Nullable ChordSymbol chord, Fraction time) {
        if (chord != null && time.isPositive()) {
            times.computeIfAbsent(measure.index(), m -> new LinkedHashMap<>())
                    .merge(chord.root(), time.toDouble(), Double::sum);
        }
    }

    /** Returns for each measure the root that holds longest; of roots that hold equally long the first counts. */
    static Map<Integer, PitchClass> longest(Map<Integer, Map<PitchClass, Double>> times) {
        Map<Integer, PitchClass> roots = new TreeMap<>();
        times.forEach((measure, byRoot) -> {
            double most = 0;
            for (Map.Entry<PitchClass, Double> entry : byRoot.entrySet()) {
                if (entry.getValue() > most) {
                    most = entry.getValue();
                    roots.put(measure, entry.getKey());
                }
            }
        });
        return roots;
    }
}
