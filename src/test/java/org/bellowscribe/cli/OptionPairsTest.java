package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every two values of two options of {@code mark} together, on two tunes of the demo book: marked, refused with a reason, or
 * wrong use that is explained; the same bytes twice, and marks that come out again. Runs with
 * {@code -Dmeasure=option-pairs} only.
 */
class OptionPairsTest {

    private static final long SLOWEST_SECONDS = 60;

    // The first value of each option is to leave it out.
    private static final List<List<String>> FACTORS = List.of(
            List.of("", "--instrument gc-21", "--instrument c-10", "--instrument bc-21", "--instrument anglo-cg-30"),
            List.of("", "--style two-lines"),
            List.of("", "--marks buttons", "--marks fingers,hand", "--marks left-hand,left-hand-fingers,chord-symbols"),
            List.of("", "--manner learner", "--manner chords-first", "--manner across-the-rows"),
            List.of("", "--pattern off-beat", "--pattern 3-4=sustained"),
            List.of("", "--times once"),
            List.of("", "--bellows-margin 50"),
            List.of("", "--start-open 8", "--start-open 92"),
            List.of("", "--transpose 0", "--transpose -5", "--transpose auto"),
            List.of("", "--keep-notes"),
            List.of("", "--part 1", "--part 1 --staff 1 --voice 1"),
            List.of("", "--left-hand-part 1"),
            List.of("", "--pins none"),
            List.of("", "--keep-edits"),
            List.of("", "--explain 2", "--explain 3:1"),
            List.of("", "--alternatives 2"),
            List.of("", "--record"),
            List.of("", "--written-left-hand part", "--written-left-hand part,sheet"),
            List.of("", "--threads 3"),
            List.of("", "--quiet"));

    @TempDir
    Path folder;

    static List<String> commands() {
        List<String> commands = new ArrayList<>();
        for (int[] row : PairwiseRows.of(FACTORS.stream().mapToInt(List::size).toArray())) {
            StringBuilder words = new StringBuilder();
            for (int factor = 0; factor < row.length; factor++) {
                words.append(' ').append(FACTORS.get(factor).get(row[factor]));
            }
            String options = words.toString().strip().replaceAll(" +", " ");
            commands.add("samples/book/two-ducks.musicxml " + options);
            commands.add("samples/book/the-leaning-gate.musicxml " + options);
        }
        return commands;
    }

    @Test
    void everyTwoValuesStandTogetherInSomeRow() {
        List<int[]> rows = PairwiseRows.of(3, 2, 4, 2);
        for (int a = 0; a < 3; a++) {
            for (int c = 0; c < 4; c++) {
                int first = a;
                int third = c;
                assertTrue(rows.stream().anyMatch(row -> row[0] == first && row[2] == third), a + " with " + c);
            }
        }
        assertTrue(rows.size() < 20, rows.size() + " rows");
    }

    @Tag("option-pairs")
    @ParameterizedTest
    @MethodSource("commands")
    void commandEndsMarkedOrExplained(String command) throws IOException {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        List<String> words = new ArrayList<>(List.of(("mark " + command).strip().split(" ")));
        words.addAll(List.of("--out", folder.resolve("out").toString()));
        CommandRun run = CommandRun.of(words.toArray(String[]::new));
        assertTrue(run.code() >= 0 && run.code() <= 2, run.err());
        assertFalse(run.err().contains("[internal]") || run.err().contains("[replay]"), run.err());
        assertFalse(run.out().contains("null") || run.err().contains("null"), run.out() + run.err());
        Map<String, String> files = files("out");
        assertEquals(run.code() == 0, files.keySet().stream().anyMatch(file -> file.endsWith("xml")), run.err());
        if (run.code() == 0) {
            requireSameTwiceAndNoTrace(words, run, files);
        }
        long seconds = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1_000_000_000;
        assertTrue(seconds < SLOWEST_SECONDS, seconds + " s");
    }

    private void requireSameTwiceAndNoTrace(List<String> words, CommandRun run, Map<String, String> files)
            throws IOException {
        words.set(words.size() - 1, folder.resolve("two").toString());
        CommandRun again = CommandRun.of(words.toArray(String[]::new));
        assertEquals(run.out().replace("/out", "/two"), again.out());
        assertEquals(files, files("two"));
        if (words.contains("--transpose") && !words.contains("--keep-notes")) {
            return;
        }
        Path score = Path.of(words.get(1));
        Path marked = folder.resolve("out").resolve(score.getFileName());
        assertEquals(
                0,
                CommandRun.of("strip", marked.toString(), "--out", folder + "/bare")
                        .code());
        assertEquals(
                Files.readString(score), Files.readString(folder.resolve("bare").resolve(score.getFileName())));
    }

    private Map<String, String> files(String below) throws IOException {
        Map<String, String> files = new TreeMap<>();
        if (Files.exists(folder.resolve(below))) {
            try (Stream<Path> all = Files.list(folder.resolve(below))) {
                for (Path file : all.toList()) {
                    files.put(file.getFileName().toString(), Files.readString(file));
                }
            }
        }
        return files;
    }
}
