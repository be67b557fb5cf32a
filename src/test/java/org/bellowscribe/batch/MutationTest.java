package org.bellowscribe.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.bellowscribe.Shared;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Severity;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.marking.KeyChoice;
import org.bellowscribe.marking.MarkSettings;
import org.bellowscribe.marking.Played;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The whole chain on damaged scores: each ends in remarks that say why, or in marks that an independent player can play
 * and that come out again without a trace. The seed of a mutant is its number; one that fails is kept in {@code target}. In the
 * build some of the samples, 350 MB; with {@code -Dmeasure=shared} four times as many, of the suite too; with
 * {@code -Dmeasure=mutants} ten times those.
 */
class MutationTest {

    private static final Path SAMPLES = Path.of("samples");
    private static final int LARGEST = 12_000;
    private static final long CELLS = 10_000;
    private static final long SLOWEST_SECONDS = 5;

    private final Map<String, Integer> ends = new TreeMap<>();

    private static Job marking() throws DiagnosedException {
        MarkSettings settings = new MarkSettings(
                InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID),
                StyleLibrary.find(StyleLibrary.DEFAULT_ID),
                Annotators.defaultIds(),
                Played.ALL,
                new SolverOptions(MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, CELLS),
                KeyChoice.AS_WRITTEN,
                ReadingOptions.DEFAULT);
        return Jobs.mark(settings, Outputs.SCORE);
    }

    private static List<byte[]> originals(List<Path> folders) throws IOException {
        List<Path> files = new ArrayList<>();
        for (Path folder : folders) {
            files.addAll(scores(folder));
        }
        List<byte[]> originals = new ArrayList<>();
        for (Path file : files) {
            byte[] bytes = Files.readAllBytes(file);
            originals.add(bytes);
            if (originals.size() % 8 == 0) {
                originals.add(compressed(bytes));
            }
        }
        return originals;
    }

    private static List<Path> scores(Path folder) throws IOException {
        try (Stream<Path> below = Files.walk(folder)) {
            return below.filter(file -> file.toString().matches(".*\\.(musicxml|xml)"))
                    .filter(file -> file.toFile().length() < LARGEST)
                    .sorted()
                    .toList();
        }
    }

    private static byte[] compressed(byte[] score) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            ZipEntry entry = new ZipEntry("score.xml");
            entry.setTime(0);
            zip.putNextEntry(entry);
            zip.write(score);
        }
        return bytes.toByteArray();
    }

    private static byte[] piped(Job job, byte[] in, List<Result> results) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        results.add(job.run(
                Source.piped(new ByteArrayInputStream(in), new PrintStream(out, true, StandardCharsets.UTF_8))));
        return out.toByteArray();
    }

    @Test
    void everyMutantEndsInRemarksOrInMarksThatComeOutAgain() throws DiagnosedException, IOException {
        checkMutants(500, List.of(SAMPLES));
    }

    @Tag("shared")
    @Test
    void mutantsOfTheSuiteEndSo() throws DiagnosedException, IOException {
        checkMutants(2_000, List.of(SAMPLES, Shared.path("corpus/suite")));
    }

    @Tag("mutants")
    @Test
    void tenTimesAsManyMutantsEndSo() throws DiagnosedException, IOException {
        checkMutants(20_000, List.of(SAMPLES, Shared.path("corpus/suite")));
    }

    private void checkMutants(int count, List<Path> folders) throws DiagnosedException, IOException {
        Job mark = marking();
        Job strip = Jobs.strip();
        List<byte[]> originals = originals(folders);
        List<byte[]> markable = originals.stream()
                .filter(each -> piped(mark, each, new ArrayList<>()).length > 0)
                .toList();
        for (int seed = 0; seed < count; seed++) {
            Random random = new Random(seed);
            List<byte[]> from = random.nextInt(4) == 0 ? originals : markable;
            byte[] mutant = new Mutator(random).damage(from.get(random.nextInt(from.size())));
            try {
                check(mutant, mark, strip);
            } catch (AssertionError | RuntimeException e) {
                Path kept = Files.write(Path.of("target", "mutant-" + seed + ".xml"), mutant);
                fail("mutant " + seed + ", kept as " + kept + ": " + e.getMessage(), e);
            }
        }
        long seconds = cpu() / 1_000_000_000;
        System.out.println(count + " mutants in " + seconds + " s of one core: " + ends);
        assertTrue(ends.getOrDefault("marked", 0) > count / 4, ends.toString());
        assertTrue(ends.size() > 4, ends.toString());
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private void check(byte[] mutant, Job mark, Job strip) {
        long start = cpu();
        List<Result> results = new ArrayList<>();
        byte[] marked = piped(mark, mutant, results);
        Result result = results.get(0);
        Diagnostic error = result.firstError();
        ends.merge(error == null ? "marked" : error.code().id(), 1, Integer::sum);
        assertEquals(error == null, result.done(), "an error if and only if nothing was written");
        if (error != null) {
            assertTrue(error.code() != DiagnosticCode.INTERNAL && error.code() != DiagnosticCode.REPLAY, error.text());
            assertEquals(0, marked.length, "bytes of a refused score");
        } else {
            assertTrue(result.diagnostics().stream().noneMatch(each -> each.severity() == Severity.ERROR));
            byte[] bare = piped(strip, mutant, results);
            assertTrue(Arrays.equals(bare, piped(strip, marked, results)), "stripping gives other bytes");
        }
        long seconds = (cpu() - start) / 1_000_000_000;
        assertTrue(seconds < SLOWEST_SECONDS, seconds + " s");
    }
}
