package org.bellowscribe.difficulty;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.bellowscribe.Shared;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.difficulty.grading.Grading;
import org.bellowscribe.difficulty.grading.GradingLibrary;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.report.TuneSummary;
import org.bellowscribe.score.Tune;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Difficulty against two blind rankings of 22 shared tunes, with simpler measures beside it, and whether it falls when a
 * tune is decided anew for another tempo or without one of its buttons. Runs with {@code -Dmeasure=difficulty} only; the
 * tables go to {@code target/difficulty.txt}. Rank correlation with the one and the other teacher:
 *
 * <pre>
 * | difficulty | 0.954 | 0.938 |
 * | notes a second | 0.799 | 0.810 |
 * | reversals a second | 0.526 | 0.554 |
 * | cost a second | 0.726 | 0.745 |
 * | length in notes | 0.322 | 0.390 |
 * | tempo | 0.520 | 0.473 |
 * | cost a note | 0.324 | 0.348 |
 * | left out one by one, weights found anew | 0.945 | 0.935 |
 * </pre>
 *
 * Grades the same 30, within one 44, of 44 (the points at which they begin were chosen by these grades). Decided anew for
 * another tempo: 110 times, on the wrong side never; decided anew without a button that was used: 129 times, easier never.
 * Weights found anew without a tune are those of the figures of the easiest way by the weights in use.
 */
@Tag("difficulty")
class RankingsTest {

    private static final double ENOUGH = 0.92;
    /** Times are sums of binary fractions, which differ in the last digits. */
    private static final double NOISE = 1e-9;

    private static final List<Double> TEMPOS = List.of(0.5, 0.75, 0.9, 1.1, 1.25);

    private final StringBuilder table = new StringBuilder();

    /** A tune of the rankings. */
    private record Ranked(String name, DecidedTune decided, double[] ranks, int[] grades) {}

    @Test
    void orderIsNearlyThatOfTwoTeachers() throws IOException {
        List<Ranked> tunes = ranked();
        compare("difficulty", tunes, tune -> Difficulty.of(tune).points());
        compare("notes a second", tunes, tune -> notes(tune) / seconds(tune));
        compare("reversals a second", tunes, tune -> TuneSummary.of(tune).reversals() / seconds(tune));
        compare("cost a second", tunes, tune -> tune.solution().cost().total() / seconds(tune));
        compare("length in notes", tunes, RankingsTest::notes);
        compare("tempo", tunes, tune -> tune.tune().tempo().quartersPerMinute());
        compare("cost a note", tunes, tune -> tune.solution().cost().total() / notes(tune));
        List<double[]> figures = tunes.stream().map(RankingsTest::figures).toList();
        double[] grades = tunes.stream()
                .mapToDouble(tune -> (tune.grades()[0] + tune.grades()[1]) / 2.0)
                .toArray();
        double[] placed = LeaveOneOut.places(figures, grades, weights());
        line("left out one by one, weights found anew", placed, tunes);
        grades(tunes);
        int[] fallen = laws(tunes);
        Files.writeString(Path.of("target", "difficulty.txt"), table);
        double[] ours = values(tunes, tune -> Difficulty.of(tune).points());
        for (int teacher = 0; teacher < 2; teacher++) {
            assertTrue(RankCorrelation.of(ours, ranks(tunes, teacher)) >= ENOUGH, table.toString());
            assertTrue(RankCorrelation.of(placed, ranks(tunes, teacher)) >= ENOUGH, table.toString());
        }
        assertArrayEquals(new int[2], fallen, table.toString());
    }

    private void compare(String name, List<Ranked> tunes, ToDoubleFunction<DecidedTune> measure) {
        line(name, values(tunes, measure), tunes);
    }

    private void line(String name, double[] values, List<Ranked> tunes) {
        print(
                "| %s | %.3f | %.3f |%n",
                name, RankCorrelation.of(values, ranks(tunes, 0)), RankCorrelation.of(values, ranks(tunes, 1)));
    }

    private void grades(List<Ranked> tunes) {
        int same = 0;
        int near = 0;
        for (Ranked tune : tunes) {
            Difficulty difficulty = Difficulty.of(tune.decided());
            int grade = difficulty.grade().number();
            print(
                    "%s: %.2f, grade %d; teachers %s%n",
                    tune.name(), difficulty.points(), grade, Arrays.toString(tune.grades()));
            for (int teacher : tune.grades()) {
                same += grade == teacher ? 1 : 0;
                near += Math.abs(grade - teacher) <= 1 ? 1 : 0;
            }
        }
        print("grades the same %d, within one %d, of %d%n", same, near, 2 * tunes.size());
    }

    /** Returns how often difficulty was on the wrong side for another tempo, and without a button. */
    private int[] laws(List<Ranked> tunes) {
        Instrument box = Deciding.box("dg-21");
        int[] tempos = new int[2];
        int[] buttons = new int[2];
        double worst = 0;
        for (Ranked tune : tunes) {
            double points = Difficulty.of(tune.decided()).points();
            Tune read = tune.decided().tune();
            for (double factor : TEMPOS) {
                DecidedTune other = Deciding.decide(Deciding.faster(read, factor), box);
                if (other != null) {
                    tempos[0]++;
                    tempos[1] += (factor > 1) == (Difficulty.of(other).points() < points) ? 1 : 0;
                }
            }
            for (Button used : used(tune.decided())) {
                DecidedTune other = Deciding.decide(read, Deciding.without(box, used));
                if (other != null) {
                    double fallen = points - Difficulty.of(other).points();
                    buttons[0]++;
                    buttons[1] += fallen > NOISE ? 1 : 0;
                    worst = Math.max(worst, fallen);
                }
            }
        }
        print("decided anew for another tempo: %d, on the wrong side %d%n", tempos[0], tempos[1]);
        print("decided anew without a button: %d, easier %d, by %.2f at most%n", buttons[0], buttons[1], worst);
        return new int[] {tempos[1], buttons[1]};
    }

    private static List<Button> used(DecidedTune decided) {
        return decided.solution().steps().stream()
                .flatMap(step -> step.buttons().stream())
                .distinct()
                .toList();
    }

    private void print(String format, Object... values) {
        table.append(String.format(Locale.ROOT, format, values));
    }

    private static double[] figures(Ranked tune) {
        return Difficulty.of(tune.decided()).terms().stream()
                .mapToDouble(TermPoints::figure)
                .toArray();
    }

    private static double[] weights() {
        Grading usual = GradingLibrary.usual();
        return Arrays.stream(org.bellowscribe.difficulty.grading.Term.values())
                .mapToDouble(usual::weight)
                .toArray();
    }

    private static double[] values(List<Ranked> tunes, ToDoubleFunction<DecidedTune> measure) {
        return tunes.stream()
                .mapToDouble(tune -> measure.applyAsDouble(tune.decided()))
                .toArray();
    }

    private static double[] ranks(List<Ranked> tunes, int teacher) {
        return tunes.stream().mapToDouble(tune -> tune.ranks()[teacher]).toArray();
    }

    private static double notes(DecidedTune decided) {
        return decided.tune().eventOrder().stream()
                .filter(event -> !decided.tune().events().get(event).isRest())
                .count();
    }

    private static double seconds(DecidedTune decided) {
        Tune tune = decided.tune();
        return tune.eventOrder().stream()
                .mapToDouble(event -> tune.seconds(tune.events().get(event)))
                .sum();
    }

    private static List<Ranked> ranked() throws IOException {
        Map<String, double[]> ranks = new LinkedHashMap<>();
        Map<String, int[]> grades = new LinkedHashMap<>();
        List<String> files = List.of("difficulty-first.csv", "difficulty-second.csv");
        for (int teacher = 0; teacher < files.size(); teacher++) {
            List<String> lines = Files.readAllLines(Shared.path("facts/teachers/" + files.get(teacher)));
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = line.split(",", 4);
                ranks.computeIfAbsent(cells[0], name -> new double[2])[teacher] = Double.parseDouble(cells[1]);
                grades.computeIfAbsent(cells[0], name -> new int[2])[teacher] = Integer.parseInt(cells[2]);
            }
        }
        assertEquals(22, ranks.size());
        List<Ranked> tunes = new ArrayList<>();
        for (Map.Entry<String, double[]> each : ranks.entrySet()) {
            Path file = Shared.path("corpus/tunes/" + each.getKey() + ".musicxml");
            DecidedTune decided = Deciding.decide(Deciding.read(file), Deciding.box("dg-21"));
            if (decided == null) {
                throw new IllegalStateException(each.getKey() + " must be playable.");
            }
            tunes.add(new Ranked(
                    each.getKey(), decided, each.getValue(), grades.getOrDefault(each.getKey(), new int[2])));
        }
        return tunes;
    }
}
