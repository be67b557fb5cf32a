package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.Shared;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a report costs: {@code mvn -B test -Dmeasure=report-cost}. Time is that of the processor, of the demo book and every
 * twelfth shared tune, marked with and without a report in turn; memory is what a process of its own takes at most, its heap
 * kept small, for few and for many tunes.
 *
 * <p>Last measured on two busy cores: 49 tunes, twice, 37.1 s marked and 38.1 s with a report, 1.03 times; with a heap of 64
 * MB 300 tunes took 116 MB at most and 6,000 tunes 129 MB.
 */
@Tag("report-cost")
class ReportCostTest {

    private static final int FEW = 300;
    private static final int MANY = 6000;
    private static final String HEAP = "-Xmx64m";

    @TempDir
    private Path folder;

    private static long processorTime() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    private double seconds(List<String> scores, String name, String... more) {
        List<String> line = new ArrayList<>(List.of("mark", "--quiet", "--threads", "1", "--force"));
        line.addAll(List.of("--out", folder.resolve(name).toString()));
        line.addAll(List.of(more));
        line.addAll(scores);
        long start = processorTime();
        CommandRun.of(line.toArray(String[]::new));
        return (processorTime() - start) / 1e9;
    }

    private static List<String> scores() throws IOException {
        List<String> scores = new ArrayList<>();
        try (Stream<Path> book = Files.list(Path.of("samples", "book"))) {
            book.sorted().map(Path::toString).forEach(scores::add);
        }
        List<Path> shared = Shared.scores("corpus/tunes");
        for (int i = 0; i < shared.size(); i += 12) {
            scores.add(shared.get(i).toString());
        }
        return scores;
    }

    @Test
    void aReportCostsAtMostAsMuchAgainAsMarking() throws IOException {
        List<String> scores = scores();
        String report = folder.resolve("report").toString();
        // The first round warms up.
        double without = 0;
        double with = 0;
        for (int round = 0; round < 3; round++) {
            double one = seconds(scores, "out");
            double other = seconds(scores, "out", "--report", report);
            without += round == 0 ? 0 : one;
            with += round == 0 ? 0 : other;
        }
        System.out.printf(
                "%d tunes, twice: %.1f s marked, %.1f s with a report: %.2f times%n",
                scores.size(), without, with, with / without);
        assertTrue(with <= 2 * without, with + " s, and without a report " + without);
    }

    /** The most memory that a process takes, in KB. */
    private long peak(int tunes) throws IOException, InterruptedException {
        Path scores = Files.createDirectories(folder.resolve("scores-" + tunes));
        String score =
                Files.readString(Path.of(ScoreText.file(folder.resolve("one.musicxml"), "D4 E4 F#4 G4 A4 B4 C#5 D5")));
        for (int i = 0; i < tunes; i++) {
            Files.writeString(scores.resolve("tune-%05d.musicxml".formatted(i)), score);
        }
        Path pages = folder.resolve("pages-" + tunes);
        Process process = start(scores, pages);
        long peak = 0;
        while (process.isAlive()) {
            peak = Math.max(peak, highWater(process.pid()));
            Thread.sleep(50);
        }
        assertEquals(0, process.exitValue(), Files.readString(folder.resolve("errors")));
        try (Stream<Path> written = Files.list(pages.resolve("tunes"))) {
            assertEquals(2L * tunes, written.count());
        }
        return peak;
    }

    private Process start(Path scores, Path pages) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        HEAP,
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.bellowscribe.cli.Main",
                        "mark",
                        scores.toString(),
                        "--threads",
                        "1",
                        "--report",
                        pages.toString())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(folder.resolve("errors").toFile())
                .start();
    }

    private static long highWater(long process) {
        try {
            return Files.readAllLines(Path.of("/proc", String.valueOf(process), "status")).stream()
                    .filter(line -> line.startsWith("VmHWM:"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                    .findFirst()
                    .orElse(0);
        } catch (IOException e) {
            // It has ended.
            return 0;
        }
    }

    @Test
    void manyTunesTakeNoMoreMemoryThanFew() throws IOException, InterruptedException {
        Assumptions.assumeTrue(Files.exists(Path.of("/proc/self/status")), "memory is read where Linux tells it");
        long few = peak(FEW);
        long many = peak(MANY);
        System.out.printf("%d tunes: %d MB at most; %d tunes: %d MB (%s)%n", FEW, few / 1024, MANY, many / 1024, HEAP);
        // What is told at the end, a line of the index and of the totals for each tune, is all that may grow.
        assertTrue(many - few <= 32 * 1024, "%d KB, and %d KB of few tunes".formatted(many, few));
    }
}
