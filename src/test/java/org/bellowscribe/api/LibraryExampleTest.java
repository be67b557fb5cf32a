package org.bellowscribe.api;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The ten lines of DEVELOPERS.md, compiled and run as they stand there. */
class LibraryExampleTest {

    @TempDir
    Path folder;

    private static String source() throws IOException {
        String text = Files.readString(Path.of("DEVELOPERS.md"));
        int start = text.indexOf("    import java.nio.file.Files;");
        String block = text.substring(start, text.indexOf("\n\n", text.indexOf("class Example", start)));
        return block.lines().map(line -> line.replaceFirst("^ {4}", "")).collect(Collectors.joining("\n"));
    }

    private static String classPath() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(place -> Path.of(place).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    @Test
    void exampleCompilesAndMarks() throws Exception {
        Path source = Files.writeString(folder.resolve("Example.java"), source());
        int code = ToolProvider.getSystemJavaCompiler()
                .run(null, null, null, "-proc:none", "-Xlint:all", "-d", folder.toString(), source.toString());
        assertEquals(0, code);
        Path tune = Path.of("samples", "book", "two-ducks.musicxml").toAbsolutePath();
        Path out = folder.resolve("out.txt");
        Process process = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        folder + File.pathSeparator + classPath(),
                        "Example",
                        tune.toString()))
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        assertEquals(0, process.waitFor(), Files.readString(out));
        assertTrue(Files.readString(folder.resolve("record.json")).contains("\"steps\""));
        byte[] expected = Bellowscribe.on("dg-21")
                .inManner("learner")
                .mark(Files.readAllBytes(tune), "x")
                .sheet();
        assertArrayEquals(expected, Files.readAllBytes(folder.resolve("marked.musicxml")));
    }
}
