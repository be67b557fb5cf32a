package org.bellowscribe.delivery;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;

/** The application image that {@code mvn -Pimage package} has made, and processes. */
final class Delivered {

    static final Path IMAGE = Path.of("target", "image", "bellowscribe");

    private Delivered() {}

    /** Skips the test, and says so, if there is no image. */
    static Path image() {
        Assumptions.assumeTrue(
                Files.isExecutable(IMAGE.resolve("bin/bellowscribe")),
                "There is no image: mvn -Pimage -Dquick -DskipTests package makes it");
        return IMAGE.toAbsolutePath();
    }

    /**
     * What a process did.
     *
     * @param code its exit code
     * @param out what it printed, on both streams
     */
    record Ended(int code, String out) {}

    /** Runs a process to its end. */
    static Ended run(Path folder, Map<String, String> environment, List<String> words)
            throws IOException, InterruptedException {
        Path out = Files.createTempFile("delivered", ".txt");
        try {
            ProcessBuilder builder = new ProcessBuilder(words)
                    .directory(folder.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(out.toFile());
            builder.environment().putAll(environment);
            int code = builder.start().waitFor();
            return new Ended(code, Files.readString(out, StandardCharsets.UTF_8));
        } finally {
            Files.delete(out);
        }
    }

    /** Returns words with others before them. */
    static List<String> words(String first, String... more) {
        List<String> words = new ArrayList<>(List.of(first));
        words.addAll(List.of(more));
        return words;
    }
}
