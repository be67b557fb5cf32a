package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.bellowscribe.Shared;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Odd music through the whole tool, with options drawn at random: it ends marked or refused with a reason, never broken;
 * marks come out again and are the same the second time. The seed of a mutant is its number; one that fails is kept in
 * {@code target}. A few here; 5,000 with {@code -Dmeasure=tune-mutants}, of the shared tunes.
 */
class TuneMutationTest {

    private static final long SLOWEST_SECONDS = 10;
    private static final Path GOLDEN = Path.of("src", "test", "resources", "org", "bellowscribe", "golden");
    private static final List<String> OPTIONS = List.of(
            "",
            "",
            "",
            "--instrument gc-21",
            "--instrument c-10 --times once",
            "--instrument bc-21 --style two-lines",
            "--instrument adg-31 --manner across-the-rows",
            "--instrument anglo-cg-30",
            "--instrument club-cf-31 --marks fingers,left-hand,left-hand-fingers,buttons",
            "--manner learner --marks buttons,left-hand,air",
            "--manner chords-first --marks chord-symbols,buttons,left-hand",
            "--transpose auto",
            "--transpose 5 --keep-notes",
            "--bellows-margin 50 --start-open 40",
            "--pattern sustained,2-3=off-beat",
            "--keep-edits",
            "--written-left-hand part --marks direction-changes,opening-at-repeat,opening,buttons,left-hand");

    private final Map<String, Integer> ends = new TreeMap<>();

    private static List<String> goldenInputs() throws IOException {
        try (Stream<Path> files = Files.walk(GOLDEN)) {
            return texts(files.filter(file -> file.endsWith("input.musicxml"))
                    .sorted()
                    .toList());
        }
    }

    private static List<String> texts(List<Path> files) throws IOException {
        List<String> texts = new ArrayList<>();
        for (Path file : files) {
            texts.add(Files.readString(file));
        }
        return texts;
    }

    @Test
    void oddMusicEndsMarkedOrRefusedWithAReason() throws IOException {
        checkMutants(goldenInputs(), 0, 200);
        assertTrue(ends.getOrDefault("marked", 0) > 30, ends.toString());
    }

    @Tag("tune-mutants")
    @Test
    void fiveThousandPiecesOfOddMusicEndSo() throws IOException {
        List<String> tunes = new ArrayList<>(goldenInputs());
        tunes.addAll(texts(Shared.scores("corpus/tunes").stream()
                .filter(file -> !file.toString().endsWith(".mxl"))
                .toList()));
        checkMutants(tunes, 10_000, 5_000);
        System.out.println(ends);
    }

    private void checkMutants(List<String> tunes, int firstSeed, int count) throws IOException {
        List<String> failures = new ArrayList<>();
        for (int seed = firstSeed; seed < firstSeed + count; seed++) {
            Random random = new Random(seed);
            byte[] mutant = new TuneMutator(random).change(tunes.get(random.nextInt(tunes.size())));
            String options = OPTIONS.get(random.nextInt(OPTIONS.size()));
            try {
                check(mutant, options.isEmpty() ? List.of() : List.of(options.split(" ")));
            } catch (AssertionError | RuntimeException e) {
                Path kept = Files.write(Path.of("target", "tune-mutant-" + seed + ".musicxml"), mutant);
                failures.add("%s %s: %s".formatted(kept, options, e.getMessage()));
            }
        }
        if (!failures.isEmpty()) {
            fail(failures.size() + " of " + count + " mutants:\n" + String.join("\n", failures));
        }
    }

    private static CommandRun mark(byte[] score, List<String> options) {
        List<String> words = new ArrayList<>(List.of("mark", "-"));
        words.addAll(options);
        return CommandRun.piped(score, words.toArray(String[]::new));
    }

    private void check(byte[] mutant, List<String> options) {
        long start = cpu();
        CommandRun run = mark(mutant, options);
        String first = run.err()
                .lines()
                .filter(line -> line.contains(": error ["))
                .findFirst()
                .orElse("");
        ends.merge(run.code() == 0 ? "marked" : first.replaceFirst(".*error \\[([a-z-]+)].*", "$1"), 1, Integer::sum);
        assertFalse(run.err().contains("[internal]") || run.err().contains("[replay]"), run.err());
        assertFalse(
                run.err().matches("(?s).*[\\p{Cntrl}&&[^\\n\\r]].*|.*[\\u202E\\u2066-\\u2069\\u2028\\u2029].*"),
                run.err());
        if (run.code() == 0) {
            assertEquals("", first);
            requireMarksComeOut(mutant, run, options);
        } else {
            assertEquals(1, run.code(), run.err());
            assertFalse(first.isEmpty(), run.err());
            assertEquals("", run.out(), "bytes of a refused score");
        }
        long seconds = (cpu() - start) / 1_000_000_000;
        assertTrue(seconds < SLOWEST_SECONDS, seconds + " s");
    }

    private static void requireMarksComeOut(byte[] mutant, CommandRun run, List<String> options) {
        byte[] marked = run.out().getBytes(StandardCharsets.ISO_8859_1);
        if (!options.contains("--transpose") || options.contains("--keep-notes")) {
            CommandRun again = mark(marked, options);
            assertEquals(run.out(), again.out(), "marked again: " + again.err());
            CommandRun bare = CommandRun.piped(mutant, "strip", "-");
            assertEquals(bare.out(), CommandRun.piped(marked, "strip", "-").out(), "stripped: " + bare.err());
        }
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
