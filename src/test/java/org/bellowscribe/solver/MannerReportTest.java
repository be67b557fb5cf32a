package org.bellowscribe.solver;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.bellowscribe.Shared;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What each manner of playing makes of the samples and of all shared tunes in their nearest key on {@code dg-21}, one
 * playing with all repeats: tables in {@code target}. Runs with {@code -Dmeasure=manner-report} only. The shared tunes,
 * in processor time of one core, warm only after the first manner; {@code proved} when equal measures may differ for
 * nothing, {@code proved, alike} and the gap with their price:
 *
 * <pre>
 * | manner | tunes | proved | proved, alike | within 2 % | largest gap | median ms | worst ms | reversals a note | row changes a note | shifts a tune | air marks a minute | left hand silent | left hand otherwise | equal measures that differ |
 * |---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|
 * | `along-the-row` | 255 | 100 % | 51.4 % | 99.2 % | 2.9 % | 31 | 2,426 | 0.44 | 0.13 | 2.7 | 4.3 | 0.6 % | 8.5 % | 250 of 1,605 |
 * | `across-the-rows` | 255 | 100 % | 37.6 % | 96.9 % | 7.5 % | 33 | 2,328 | 0.22 | 0.38 | 5.3 | 4.9 | 0.7 % | 8.9 % | 356 of 1,605 |
 * | `chords-first` | 255 | 100 % | 51.4 % | 98.0 % | 7.0 % | 28 | 1,456 | 0.32 | 0.28 | 3.2 | 4.0 | 0.6 % | 5.1 % | 251 of 1,605 |
 * | `learner` | 255 | 99.6 % | 42.7 % | 97.3 % | 11.7 % | 36 | 7,672 | 0.53 | 0.06 | 0.9 | 0.6 | 10.9 % | 8.3 % | 257 of 1,605 |
 * </pre>
 *
 * Strictly along one row the published share is 0.56 reversals a note (719 tunes in D and G, measured on melodies alone).
 */
@Tag("manner-report")
class MannerReportTest {

    private static final double NANOSECONDS = 1e6;
    private static final String HEAD =
            "| manner | tunes | proved | proved, alike | within 2 % | largest gap | median ms | worst ms | points"
                    + " | reversals a note | row changes a note | shifts a tune | air marks a minute | left hand silent"
                    + " | left hand otherwise | equal measures that differ |\n|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|\n";

    private static final class Sums {
        private final List<Double> times = new ArrayList<>();
        private final List<MarkFigures> figures = new ArrayList<>();
        private int proved;
        private int provedAlike;
        private int near;
        private int points;
        private double worstGap;

        void add(Solution solution, MarkFigures tune, double milliseconds) {
            Cost cost = solution.cost();
            times.add(milliseconds);
            figures.add(tune);
            proved += cost.apart().isProved() ? 1 : 0;
            provedAlike += cost.isProved() ? 1 : 0;
            near += 50 * (cost.total() - cost.lowerBound()) <= cost.total() ? 1 : 0;
            points += cost.total();
            worstGap = Math.max(worstGap, 1 - (double) cost.lowerBound() / Math.max(1, cost.total()));
        }

        private double sum(ToDoubleFunction<MarkFigures> figure) {
            return figures.stream().mapToDouble(figure).sum();
        }

        String line(String manner) {
            Collections.sort(times);
            double notes = sum(MarkFigures::notes);
            double wanted = Math.max(1, sum(MarkFigures::wanted));
            return String.format(
                    Locale.ROOT,
                    "| `%s` | %d | %.1f %% | %.1f %% | %.1f %% | %.1f %% | %.0f | %.0f | %d | %.2f | %.2f | %.1f | %.1f | %.1f %% | %.1f %% | %.0f of %.0f |%n",
                    manner,
                    times.size(),
                    100.0 * proved / times.size(),
                    100.0 * provedAlike / times.size(),
                    100.0 * near / times.size(),
                    100 * worstGap,
                    times.get(times.size() / 2),
                    times.get(times.size() - 1),
                    points,
                    sum(MarkFigures::reversals) / notes,
                    sum(MarkFigures::rowChanges) / notes,
                    sum(MarkFigures::shifts) / times.size(),
                    60 * sum(MarkFigures::presses) / sum(MarkFigures::seconds),
                    100 * sum(MarkFigures::silent) / wanted,
                    100 * sum(MarkFigures::substituted) / wanted,
                    sum(MarkFigures::unlike),
                    sum(MarkFigures::twins));
        }
    }

    @Test
    void samples() throws DiagnosedException, IOException {
        try (Stream<Path> files = Files.walk(Path.of("samples"))) {
            report(
                    "samples",
                    files.filter(file -> file.toString().endsWith(".musicxml"))
                            .sorted()
                            .toList());
        }
    }

    @Test
    void sharedTunes() throws DiagnosedException, IOException {
        report("shared", Shared.scores("corpus/tunes"));
    }

    private static void report(String name, List<Path> files) throws DiagnosedException, IOException {
        Instrument instrument = InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID);
        List<Tune> tunes = new ArrayList<>();
        for (Path file : files) {
            Tune tune = NearestKey.of(file, instrument);
            if (tune != null) {
                tunes.add(tune);
            }
        }
        StringBuilder table = new StringBuilder(HEAD);
        for (Manner manner : MannerLibrary.all()) {
            Sums sums = new Sums();
            for (Tune tune : tunes) {
                solve(tune, instrument, manner, sums);
            }
            table.append(sums.line(manner.id()));
            assertTrue(sums.near >= 0.9 * tunes.size(), () -> manner.id() + " is near the least in " + sums.near);
            assertTrue(sums.proved >= 0.99 * tunes.size(), () -> manner.id() + " is proved in " + sums.proved);
        }
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target", "manners-" + name + ".txt"), table);
    }

    private static void solve(Tune tune, Instrument instrument, Manner manner, Sums sums) {
        SolverOptions options = new SolverOptions(manner, Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT);
        List<WantedSound> wanted = UsualPlan.of(tune, instrument);
        long begin = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Outcome outcome = Solver.solve(tune, instrument, wanted, options);
        long end = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        if (outcome instanceof Outcome.Solved solved) {
            Solution solution = solved.solution();
            sums.add(solution, MarkFigures.of(tune, wanted, solution), (end - begin) / NANOSECONDS);
        }
    }
}
