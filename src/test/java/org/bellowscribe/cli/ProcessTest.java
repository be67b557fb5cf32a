package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The tool as a process of its own. */
class ProcessTest {

    @TempDir
    Path folder;

    private record Ended(int code, String out) {}

    private Ended run(List<String> javaOptions, String... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.add("-XX:TieredStopAtLevel=1");
        command.addAll(javaOptions);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), "org.bellowscribe.cli.Main"));
        command.addAll(List.of(words));
        Path out = folder.resolve("out.txt");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(folder.resolve("err.txt").toFile())
                .start();
        return new Ended(process.waitFor(), Files.readString(out, StandardCharsets.UTF_8));
    }

    @Test
    void exitCodeIsThatOfTheProcess() throws Exception {
        assertEquals(2, run(List.of(), "mark").code());
        assertTrue(Files.readString(folder.resolve("err.txt")).startsWith("No file or folder is named."));
    }

    /** Turkish changes capital letters, Egyptian Arabic figures, and another charset what is printed. */
    @Test
    void languageOfTheComputerChangesNothing() throws Exception {
        String tune = "samples/the-ferry-bell.musicxml";
        String target = folder.resolve("marked").toString();
        CommandRun here = CommandRun.of("mark", tune, "--record", "--out", target);
        byte[] marked = Files.readAllBytes(folder.resolve("marked/the-ferry-bell.musicxml"));
        byte[] data = Files.readAllBytes(folder.resolve("marked/the-ferry-bell.record.json"));
        for (String language : List.of("tr", "ar-EG-u-nu-arab")) {
            List<String> options = List.of(
                    "-Duser.language=" + language.substring(0, 2),
                    "-Duser.country=" + (language.equals("tr") ? "TR" : "EG"),
                    "-Duser.extensions=" + (language.equals("tr") ? "" : "u-nu-arab"),
                    "-Dfile.encoding=ISO-8859-1");
            Ended there = run(options, "mark", tune, "--record", "--out", target);
            assertEquals(new Ended(here.code(), here.out()), there, language);
            assertEquals(here.err(), Files.readString(folder.resolve("err.txt")), language);
            assertEquals(hex(marked), hex(Files.readAllBytes(folder.resolve("marked/the-ferry-bell.musicxml"))));
            assertEquals(hex(data), hex(Files.readAllBytes(folder.resolve("marked/the-ferry-bell.record.json"))));
        }
    }

    private static String hex(byte[] bytes) {
        return java.util.HexFormat.of().formatHex(bytes);
    }
}
