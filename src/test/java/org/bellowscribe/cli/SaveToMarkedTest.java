package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How long it takes from the moment a score is saved until its marked copy stands there, with {@code --watch} as a process
 * of its own that is warm. Writes {@code target/watch.txt}.
 */
@Tag("watch")
class SaveToMarkedTest {

    private static final int SAVES = 15;
    /** After so many the process is warm. */
    private static final int COLD = 4;

    private static final long PATIENCE_MILLISECONDS = 60_000;

    @TempDir
    Path folder;

    @Test
    void savesAreTimed() throws IOException, InterruptedException {
        String text = Files.readString(Path.of("samples/book/the-weighbridge.musicxml"));
        Path score = Files.createDirectories(folder.resolve("book")).resolve("tune.musicxml");
        Path marked = folder.resolve("marked/tune.musicxml");
        Files.writeString(score, text);
        Process watching = watching(score.getParent(), marked.getParent());
        double[] seconds = new double[SAVES];
        try {
            await(marked, "");
            for (int i = 0; i < SAVES; i++) {
                String before = Files.readString(marked, StandardCharsets.UTF_8);
                // A tune that is decided anew: the last note is another one each time.
                Files.writeString(score, changed(text, i));
                long saved = System.nanoTime();
                await(marked, before);
                seconds[i] = (System.nanoTime() - saved) / 1e9;
                Thread.sleep(300);
            }
        } finally {
            watching.destroy();
            watching.waitFor();
        }
        tell(text.split("<measure ", -1).length - 1, seconds);
    }

    private static void tell(int measures, double[] seconds) throws IOException {
        double[] warm = Arrays.stream(seconds).skip(COLD).sorted().toArray();
        String line = String.format(
                Locale.ROOT,
                "%d measures, saved %d times: marked after %.2f s in the median, %.2f to %.2f s",
                measures,
                warm.length,
                warm[warm.length / 2],
                warm[0],
                warm[warm.length - 1]);
        Files.writeString(Path.of("target", "watch.txt"), line + "\n");
        System.out.println(line);
    }

    private Process watching(Path book, Path out) throws IOException {
        return new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.bellowscribe.cli.Main",
                        "mark",
                        book.toString(),
                        "--out",
                        out.toString(),
                        "--watch"))
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("told.txt").toFile())
                .start();
    }

    private static String changed(String text, int save) {
        int last = text.lastIndexOf("<step>");
        return text.substring(0, last + 6) + (save % 2 == 0 ? "B" : "G") + text.substring(last + 7);
    }

    private void await(Path marked, String before) throws IOException, InterruptedException {
        long end = System.nanoTime() + PATIENCE_MILLISECONDS * 1_000_000;
        while (!Files.exists(marked)
                || Files.readString(marked, StandardCharsets.UTF_8).equals(before)) {
            assertTrue(System.nanoTime() < end, Files.readString(folder.resolve("told.txt")));
            Thread.sleep(5);
        }
    }
}
