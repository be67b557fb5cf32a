package org.bellowscribe.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two builds of the same sources in two folders give the same jar, the same list of parts and the same image. */
@Tag("reproducible")
class ReproducibleTest {

    private static final List<String> SOURCES = List.of("pom.xml", "src", "samples", "schemas", "shared");

    @TempDir
    Path folder;

    @Test
    void jarPartsAndImageAreTheSameBytes() throws Exception {
        // Both are copied before either is built: the sources may change meanwhile.
        Path one = copied(folder.resolve("one"));
        Path other = copied(folder.resolve("another/of/a-longer-name"));
        SortedMap<String, String> first = built(one);
        assertEquals(first, built(other));
        assertEquals(true, first.containsKey("image/bellowscribe/lib/bellowscribe.jsa"));
    }

    private static Path copied(Path copy) throws IOException, InterruptedException {
        Files.createDirectories(copy);
        Path here = Path.of("").toAbsolutePath();
        for (String source : SOURCES) {
            run(here, List.of("cp", "-r", source, copy.toString()));
        }
        return copy;
    }

    private static SortedMap<String, String> built(Path copy) throws IOException, InterruptedException {
        run(copy, List.of("mvn", "-B", "-ntp", "-q", "-Pimage", "-Dquick", "-DskipTests", "package"));
        SortedMap<String, String> sums = new TreeMap<>();
        Path target = copy.resolve("target");
        for (Path built : List.of(
                target.resolve("bellowscribe.jar"), target.resolve("bellowscribe.cdx.json"), target.resolve("image"))) {
            try (Stream<Path> files = Files.walk(built)) {
                files.filter(Files::isRegularFile)
                        .forEach(file -> sums.put(target.relativize(file).toString(), sum(file)));
            }
        }
        return sums;
    }

    private static void run(Path folder, List<String> words) throws IOException, InterruptedException {
        Delivered.Ended ended = Delivered.run(folder, Map.of(), words);
        assertEquals(0, ended.code(), ended.out());
    }

    private static String sum(Path file) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(Files.readAllBytes(file)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
