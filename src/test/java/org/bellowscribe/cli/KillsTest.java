package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two runs at once on one folder, and, as the measurement {@code kills}, 200 runs of a process that is killed at some
 * moment: no half file, no lost score, and the run that goes on ends with the same bytes as one that was not disturbed.
 *
 * <p>Last taken on two crowded cores, in 20 minutes: 200 kills, 111 of them after the run had written something more;
 * temporary files were left and the run that went on removed them; 4 runs went on to the end.
 */
class KillsTest {

    private static final String GOOD = "D5 E5 F#5 G5 A5 B5 A5 G5";
    private static final int KILLS = 200;
    private static final int TUNES = 40;

    @TempDir
    Path folder;

    private void book(int tunes) throws IOException {
        for (int i = 0; i < tunes; i++) {
            ScoreText.write(folder.resolve("book/tune%02d.musicxml".formatted(i)), ScoreText.of("Tune " + i, GOOD));
        }
    }

    private static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.list(folder)) {
                for (Path file : all.toList()) {
                    files.put(file.getFileName().toString(), Files.readString(file));
                }
            }
        }
        return files;
    }

    private String[] line(String out) {
        return new String[] {"mark", folder + "/book", "--record", "--threads", "2", "--out", folder + "/" + out};
    }

    @Test
    void twoRunsAtOnceEndAsOneDoes() throws Exception {
        book(12);
        assertEquals(0, CommandRun.of(line("whole")).code());
        List<CommandRun> runs = new ArrayList<>();
        Thread other = new Thread(() -> runs.add(CommandRun.of(line("out"))));
        other.start();
        runs.add(CommandRun.of(line("out")));
        other.join();
        runs.forEach(run -> assertEquals(0, run.code(), run.err()));
        Map<String, String> whole = files(folder.resolve("whole"));
        Map<String, String> out = files(folder.resolve("out"));
        String ledger = whole.remove(".bellowscribe-results");
        out.remove(".bellowscribe-results");
        assertEquals(whole, out);
        CommandRun.of(line("out"));
        assertEquals(ledger, files(folder.resolve("out")).get(".bellowscribe-results"));
    }

    @Test
    @Tag("kills")
    void killedRunsLeaveNoHalfFileAndGoOn() throws Exception {
        book(TUNES);
        CommandRun.of(line("whole"));
        Map<String, String> whole = files(folder.resolve("whole"));
        Map<String, String> book = files(folder.resolve("book"));
        Random random = new Random(18);
        Count count = new Count();
        for (int kill = 0; kill < KILLS; kill++) {
            Path out = folder.resolve("out" + count.finished);
            int before = files(out).size();
            boolean ended = runAndKill(out, random.nextInt(120));
            Map<String, String> found = files(out);
            count.within += found.size() > before && !ended ? 1 : 0;
            count.leftovers += found.keySet().stream().anyMatch(name -> name.endsWith(".part")) ? 1 : 0;
            assertWhole(found, whole);
            assertEquals(book, files(folder.resolve("book")), "no score is lost");
            if (ended || found.size() >= whole.size()) {
                assertResumed(out, whole);
                count.finished++;
            }
        }
        assertResumed(folder.resolve("out" + count.finished), whole);
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target", "kills.txt"), count.table());
        assertTrue(count.within > KILLS / 2, count.table());
    }

    private static void assertWhole(Map<String, String> found, Map<String, String> whole) {
        found.forEach((name, text) -> assertTrue(name.startsWith(".") || text.equals(whole.get(name)), name));
    }

    /** What was seen. */
    private static final class Count {
        private int within;
        private int leftovers;
        private int finished;

        String table() {
            return "%d kills, %d of them after the run had written something more; %d times a temporary file was left; %d runs went on to the end%n"
                    .formatted(KILLS, within, leftovers, finished + 1);
        }
    }

    private void assertResumed(Path out, Map<String, String> whole) throws IOException {
        for (String name : files(out).keySet()) {
            if (name.endsWith(".part")) {
                Files.setLastModifiedTime(
                        out.resolve(name), FileTime.from(Instant.now().minusSeconds(700)));
            }
        }
        assertEquals(0, CommandRun.of(line(out.getFileName().toString())).code());
        assertEquals(whole, files(out));
    }

    /** Starts a run, waits until it has written one file more, and so long on; returns true if it had ended by then. */
    private boolean runAndKill(Path out, int milliseconds) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                "org.bellowscribe.cli.Main"));
        command.addAll(List.of(line(out.getFileName().toString())));
        int before = count(out);
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("told.txt").toFile())
                .start();
        while (process.isAlive() && count(out) <= before) {
            Thread.sleep(1);
        }
        Thread.sleep(milliseconds);
        boolean ended = !process.isAlive();
        process.destroyForcibly().waitFor();
        return ended;
    }

    private static int count(Path out) {
        String[] names = new File(out.toString()).list();
        return names == null ? 0 : names.length;
    }
}
