package org.bellowscribe.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmark in JMH and writes its table into {@code target}. */
@Tag("solver-benchmark")
class SolverBenchmarkTest {

    private static final int COMBINATIONS = 24;

    @Test
    void tableIsWritten() throws Exception {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(SolverBenchmark.class.getName())
                        .shouldFailOnError(true)
                        .build())
                .run();
        StringBuilder table =
                new StringBuilder("| measures | repeats | bellows | ms a tune | +- | proved |\n|---|---|---|---|---|---|\n");
        for (RunResult result : results) {
            SolverBenchmark one = new SolverBenchmark();
            one.measures = Integer.parseInt(result.getParams().getParam("measures"));
            one.repeats = Boolean.parseBoolean(result.getParams().getParam("repeats"));
            one.capacity = Integer.parseInt(result.getParams().getParam("capacity"));
            one.setUp();
            table.append(String.format(
                    Locale.ROOT,
                    "| %d | %s | %d RU·s | %.1f | %.1f | %d of %d |%n",
                    one.measures,
                    one.repeats ? "yes" : "no",
                    one.capacity,
                    result.getPrimaryResult().getScore(),
                    result.getPrimaryResult().getScoreError(),
                    one.proved(),
                    SolverBenchmark.TUNES));
        }
        Files.writeString(Path.of("target", "solver-benchmark.txt"), table);
        assertEquals(COMBINATIONS, results.size());
    }
}
