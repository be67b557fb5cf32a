package org.bellowscribe.accompaniment;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * How often the harmony that is found meets the chord symbols of a score that were hidden from it: for each full measure
 * the root that holds longest. The points of {@link HarmonyCosts} were weighed on the even half of the files only. The
 * table goes to {@code target/harmony-agreement.txt}:
 *
 * <pre>
 * | | measures | tonic only | key profile of each measure only | found |
 * |---|---|---|---|---|
 * | dance tunes (`rjl20-oldtime`), even half | 440 | 59.8 % | 44.1 % | 78.2 % |
 * | dance tunes, odd half | 473 | 56.9 % | 42.7 % | 77.4 % |
 * | songs (`openewld`), even half | 875 | 52.3 % | 36.1 % | 74.6 % |
 * | songs, odd half | 1,068 | 43.4 % | 38.6 % | 75.1 % |
 * </pre>
 */
@Tag("shared")
class HarmonyAgreementTest {

    private static final Set<PitchClass> ALL_ROOTS =
            IntStream.range(0, 12).mapToObj(PitchClass::of).collect(Collectors.toSet());
    private static final double CLEARLY = 10;

    /** A way to name a root for each measure. */
    private enum Method {
        TONIC(tune -> byMeasure(tune, measure -> measure.key().tonic())),
        KEY_PROFILE(HarmonyAgreementTest::byProfile),
        FOUND(FinalHarmonyTest::found);

        private final Function<Tune, Map<Integer, PitchClass>> roots;

        Method(Function<Tune, Map<Integer, PitchClass>> roots) {
            this.roots = roots;
        }
    }

    private record Share(int met, int measures) {
        double percent() {
            return 100.0 * met / measures;
        }

        Share plus(Share other) {
            return new Share(met + other.met, measures + other.measures);
        }
    }

    @Test
    void foundHarmonyMeetsChordSymbolsMoreOftenThanEitherBaseline() throws IOException {
        StringBuilder table = new StringBuilder();
        for (String collection : List.of("rjl20-oldtime", "openewld")) {
            for (int half = 0; half < 2; half++) {
                Map<Method, Share> shares = shares(HiddenSymbols.tunes(collection, half));
                table.append(line(collection, half, shares));
                double best = Math.max(
                        share(shares, Method.TONIC).percent(),
                        share(shares, Method.KEY_PROFILE).percent());
                assertTrue(share(shares, Method.FOUND).percent() > best + CLEARLY, table::toString);
            }
        }
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target", "harmony-agreement.txt"), table);
    }

    private static String line(String collection, int half, Map<Method, Share> shares) {
        return String.format(
                Locale.ROOT,
                "%s, %s half: tonic only %.1f %%, key profile only %.1f %%, found %.1f %% of %d measures%n",
                collection,
                half == 0 ? "even" : "odd",
                share(shares, Method.TONIC).percent(),
                share(shares, Method.KEY_PROFILE).percent(),
                share(shares, Method.FOUND).percent(),
                share(shares, Method.FOUND).measures());
    }

    private static Share share(Map<Method, Share> shares, Method method) {
        return shares.getOrDefault(method, new Share(0, 1));
    }

    private static Map<Method, Share> shares(List<Tune> tunes) {
        Map<Method, Share> shares = new TreeMap<>();
        for (Tune tune : tunes) {
            Map<Integer, PitchClass> given = HiddenSymbols.given(tune);
            for (Method method : Method.values()) {
                Map<Integer, PitchClass> roots = method.roots.apply(HiddenSymbols.hidden(tune));
                int met = (int) given.entrySet().stream()
                        .filter(entry -> entry.getValue().equals(roots.get(entry.getKey())))
                        .count();
                shares.merge(method, new Share(met, given.size()), Share::plus);
            }
        }
        return shares;
    }

    private static Map<Integer, PitchClass> byMeasure(Tune tune, Function<Measure, PitchClass> root) {
        return tune.measures().stream().collect(Collectors.toMap(Measure::index, root));
    }

    // The triad of the scale whose key, by its profile, suits the notes of the measure best.
    private static Map<Integer, PitchClass> byProfile(Tune tune) {
        List<HarmonySpan> measures = tune.measures().stream()
                .map(measure -> new HarmonySpan(measure.index(), Fraction.ZERO, measure.length()))
                .toList();
        List<MelodyTones> tones = MelodyTones.of(tune, measures);
        return byMeasure(tune, measure -> {
            PitchClass home = new Key(measure.key().fifths(), Mode.MAJOR).tonic();
            PitchClass best = home;
            double most = -2;
            for (int step : new int[] {0, 5, 7, 2, 4, 9}) {
                boolean minor = step == 2 || step == 4 || step == 9;
                double[] heard = KeyProfile.sum(List.of(tones.get(measure.index())));
                double correlation = KeyProfile.correlation(heard, home.plus(step), minor);
                if (correlation > most) {
                    most = correlation;
                    best = home.plus(step);
                }
            }
            return best;
        });
    }
}
