package org.bellowscribe.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a start costs through the delivered launcher, beside the jar and beside reading and writing the same score by
 * ProxyMusic alone. Writes {@code target/start.txt}; needs the image and bash.
 */
@Tag("start")
class StartTest {

    private static final int RUNS = 11;
    private static final String TUNE = "samples/book/crab-apple-jig.musicxml";

    @TempDir
    Path folder;

    private record Spent(double processor, double clock) {}

    @Test
    void startsAreMeasured() throws IOException, InterruptedException {
        String launcher = Delivered.image().resolve("bin/bellowscribe").toString();
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String jar = Path.of("target", "bellowscribe.jar").toString();
        String out = folder.resolve("marked").toString();
        List<String> lines = new ArrayList<>();
        lines.add("%-46s %9s %17s %9s".formatted("", "processor", "least to most", "clock"));
        lines.add(row("--help, by the launcher", launcher, "--help"));
        lines.add(row("mark --help, by the launcher", launcher, "mark", "--help"));
        lines.add(row("one tune of 16 measures, by the launcher", launcher, "mark", TUNE, "--force", "--out", out));
        lines.add(row("the same, by java -jar", java, "-jar", jar, "mark", TUNE, "--force", "--out", out));
        lines.add(row(
                "read and written by ProxyMusic alone, C1",
                java,
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                PlainJaxb.class.getName(),
                TUNE));
        Files.write(Path.of("target", "start.txt"), lines);
        lines.forEach(System.out::println);
    }

    private static String row(String name, String... words) throws IOException, InterruptedException {
        List<Spent> all = new ArrayList<>();
        for (int run = 0; run <= RUNS; run++) {
            Spent spent = spent(words);
            // The first run brings the files into memory.
            if (run > 0) {
                all.add(spent);
            }
        }
        double[] processor = all.stream().mapToDouble(Spent::processor).sorted().toArray();
        double[] clock = all.stream().mapToDouble(Spent::clock).sorted().toArray();
        return String.format(
                Locale.ROOT,
                "%-46s %7.2f s %7.2f to %4.2f s %7.2f s",
                name,
                processor[RUNS / 2],
                processor[0],
                processor[RUNS - 1],
                clock[RUNS / 2]);
    }

    private static Spent spent(String... words) throws IOException, InterruptedException {
        List<String> all =
                new ArrayList<>(List.of("bash", "-c", "TIMEFORMAT='%U %S %R'; time \"$@\" >/dev/null 2>&1", "timed"));
        all.addAll(Arrays.asList(words));
        Delivered.Ended ended = Delivered.run(Path.of("").toAbsolutePath(), Map.of(), all);
        assertEquals(0, ended.code(), ended.out());
        String[] figures = ended.out().strip().split(" ");
        return new Spent(
                Double.parseDouble(figures[0]) + Double.parseDouble(figures[1]), Double.parseDouble(figures[2]));
    }
}
