package org.bellowscribe;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * Material that lies beside the project, never in it. A test that needs it is skipped, and says so, where it is absent.
 */
public final class Shared {

    private static final Path ROOT = Path.of("..", "shared");
    private static final int SHARE = 7;

    private Shared() {}

    /** Returns a file or folder below {@code ../shared}, or skips the calling test if it is absent. */
    public static Path path(String below) {
        Path path = ROOT.resolve(below);
        Assumptions.assumeTrue(Files.exists(path), () -> "skipped: " + path + " is not here");
        return path;
    }

    /** Returns every seventh of the scores below a folder of {@code ../shared}, for slow checks. */
    public static List<Path> sample(String below) {
        List<Path> scores = scores(below);
        return IntStream.range(0, scores.size())
                .filter(i -> i % SHARE == 0)
                .mapToObj(scores::get)
                .toList();
    }

    /** Returns the scores below a folder of {@code ../shared}, sorted, or skips the calling test if it is absent. */
    public static List<Path> scores(String below) {
        try (Stream<Path> files = Files.walk(path(below))) {
            return files.filter(file -> file.toString().matches(".*\\.(musicxml|xml|mxl)"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
