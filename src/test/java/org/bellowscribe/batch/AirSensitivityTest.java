package org.bellowscribe.batch;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.bellowscribe.Shared;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.AirModel;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Tempo;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How marks change when capacity, left-hand flow or tempo change by a quarter. Runs with
 * {@code -Dmeasure=air-sensitivity} only; tables in {@code target/air-sensitivity-*.txt}. On {@code dg-21}, tunes as
 * written, 25 of the samples and 26 of every seventh shared score, none of them for one time only:
 *
 * <pre>
 * | | samples: air marks, tunes with others | reversals, cost | shared: air marks, tunes with others | reversals, cost |
 * |---|---|---|---|---|
 * | as in the library | 41, 0 | 1019, 4751 | 34, 0 | 1916, 9158 |
 * | capacity -25 % | 46, 5 | 1023, 4802 | 33, 3 | 1912, 9171 |
 * | capacity +25 % | 41, 0 | 1019, 4751 | 34, 1 | 1896, 9156 |
 * | left-hand flow -25 % | 39, 4 | 1013, 4711 | 33, 7 | 1912, 9121 |
 * | left-hand flow +25 % | 39, 4 | 1031, 4793 | 30, 9 | 1907, 9188 |
 * | tempo -25 % | 52, 13 | 1108, 4361 | 35, 7 | 2015, 8235 |
 * | tempo +25 % | 42, 10 | 955, 5540 | 35, 10 | 1676, 10896 |
 * </pre>
 *
 * A quarter more or less of the capacity changes few sheets, of the left hand's flow some, of the tempo a third to a half:
 * so a stated tempo matters more than a good guess at the bellows.
 */
@Tag("air-sensitivity")
class AirSensitivityTest {

    private static final SolverOptions SOLVER = new SolverOptions(
            MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT);

    private record Case(double capacity, double leftHand, double tempo) {}

    private static final class Sums {
        private int marked;
        private int once;
        private int withAir;
        private int airMarks;
        private int reversals;
        private long cost;
        private int other;

        String line(String name) {
            return "| %s | %d | %d | %d | %d | %d | %d | %d |%n"
                    .formatted(name, marked, once, withAir, airMarks, reversals, cost, other);
        }
    }

    private static Map<String, Case> cases() {
        Map<String, Case> cases = new LinkedHashMap<>();
        cases.put("as in the library", new Case(1, 1, 1));
        cases.put("capacity -25 %", new Case(0.75, 1, 1));
        cases.put("capacity +25 %", new Case(1.25, 1, 1));
        cases.put("left-hand flow -25 %", new Case(1, 0.75, 1));
        cases.put("left-hand flow +25 %", new Case(1, 1.25, 1));
        cases.put("tempo -25 %", new Case(1, 1, 0.75));
        cases.put("tempo +25 %", new Case(1, 1, 1.25));
        return cases;
    }

    @ParameterizedTest
    @ValueSource(strings = {"samples", "corpus"})
    void smallerBellowsNeverCostLess(String set) throws DiagnosedException, IOException {
        List<Tune> tunes = tunes(set.equals("samples") ? samples() : Shared.sample("corpus/tunes"));
        Instrument instrument = InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID);
        List<String> plain = new ArrayList<>();
        Map<String, Sums> sums = new LinkedHashMap<>();
        StringBuilder table = new StringBuilder();
        for (Map.Entry<String, Case> each : cases().entrySet()) {
            Sums sum = sum(tunes, instrument, each.getValue(), plain);
            sums.put(each.getKey(), sum);
            table.append(sum.line(each.getKey()));
        }
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target", "air-sensitivity-" + set + ".txt"), table.toString());
        Sums base = sums.getOrDefault("as in the library", new Sums());
        Sums small = sums.getOrDefault("capacity -25 %", new Sums());
        Sums large = sums.getOrDefault("capacity +25 %", new Sums());
        assertTrue(base.marked > 10, base.marked + " tunes");
        assertTrue(small.marked <= base.marked && base.marked <= large.marked, table::toString);
    }

    private static Sums sum(List<Tune> tunes, Instrument instrument, Case each, List<String> plain) {
        Sums sum = new Sums();
        Instrument box = changed(instrument, each);
        boolean first = plain.isEmpty();
        for (int i = 0; i < tunes.size(); i++) {
            Tune tune = atTempo(tunes.get(i), each.tempo());
            Outcome outcome = Solver.solve(tune, box, UsualPlan.of(tune, box), SOLVER);
            String marks = "";
            if (outcome instanceof Outcome.Solved solved) {
                marks = airMarks(solved.solution());
                add(sum, tune, solved.solution());
            }
            if (first) {
                plain.add(marks);
            }
            sum.other += marks.equals(plain.get(i)) ? 0 : 1;
        }
        return sum;
    }

    private static void add(Sums sum, Tune tune, Solution solution) {
        int airMarks = (int) solution.steps().stream()
                .filter(step -> step.air() != AirUse.NONE)
                .count();
        List<Integer> order = tune.eventOrder();
        for (int i = 1; i < order.size(); i++) {
            boolean turns = solution.steps().get(order.get(i)).direction()
                    != solution.steps().get(order.get(i - 1)).direction();
            sum.reversals += turns ? 1 : 0;
        }
        sum.marked++;
        sum.once += solution.again() ? 0 : 1;
        sum.withAir += airMarks > 0 ? 1 : 0;
        sum.airMarks += airMarks;
        sum.cost += solution.cost().total();
    }

    private static String airMarks(Solution solution) {
        StringBuilder marks = new StringBuilder("-");
        solution.steps().forEach(step -> marks.append(step.air().ordinal()));
        return marks.toString();
    }

    private static Instrument changed(Instrument box, Case each) {
        Bellows bellows = box.bellows();
        AirModel air = box.air();
        return new Instrument(
                box.id(),
                box.name(),
                box.buttons(),
                box.leftHand(),
                new Bellows(
                        bellows.capacity() * each.capacity(),
                        bellows.reserve(),
                        bellows.lightAirFlow(),
                        bellows.fullAirFlow()),
                new AirModel(
                        air.referenceFrequency(),
                        air.exponent(),
                        air.least(),
                        air.most(),
                        air.voices(),
                        air.bassFlow() * each.leftHand(),
                        air.chordFlow() * each.leftHand(),
                        air.chordWithoutThirdFlow() * each.leftHand(),
                        air.loudnessSlack()));
    }

    private static Tune atTempo(Tune tune, double factor) {
        return new Tune(
                tune.title(),
                tune.part(),
                tune.measures(),
                tune.events(),
                tune.harmonies(),
                new Tempo(
                        tune.tempo().quartersPerMinute() * factor, tune.tempo().stated()),
                tune.playOrder(),
                tune.diagnostics());
    }

    private static List<Path> samples() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("samples"))) {
            return files.filter(file -> file.toString().endsWith(".musicxml"))
                    .sorted()
                    .toList();
        }
    }

    private static List<Tune> tunes(List<Path> files) throws DiagnosedException, IOException {
        List<Tune> tunes = new ArrayList<>();
        for (Path file : files) {
            String text = ScoreDocument.decode(Files.readAllBytes(file)).text();
            tunes.add(ScoreReader.read(text, "tune", ReadingOptions.DEFAULT));
        }
        return tunes;
    }
}
