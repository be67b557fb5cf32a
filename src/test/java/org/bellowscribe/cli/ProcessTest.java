package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
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
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
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
        String tune = "samples/book/the-ferry-bell.musicxml";
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
            Ended there = run(options, "mark", tune, "--record", "--force", "--out", target);
            assertEquals(new Ended(here.code(), here.out()), there, language);
            assertEquals(here.err(), Files.readString(folder.resolve("err.txt")), language);
            assertEquals(hex(marked), hex(Files.readAllBytes(folder.resolve("marked/the-ferry-bell.musicxml"))));
            assertEquals(hex(data), hex(Files.readAllBytes(folder.resolve("marked/the-ferry-bell.record.json"))));
        }
    }

    /** Runs the tool by a shell, which closes streams and chooses characters. */
    private int shell(String words) throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java")
                + " -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -cp '" + System.getProperty("java.class.path")
                + "' org.bellowscribe.cli.Main ";
        Process process;
        try {
            process = new ProcessBuilder("sh", "-c", words.replace("TOOL ", java))
                    .directory(folder.toFile())
                    .redirectOutput(folder.resolve("out.txt").toFile())
                    .redirectError(folder.resolve("err.txt").toFile())
                    .start();
        } catch (IOException e) {
            return Assumptions.abort("skipped: no shell here");
        }
        return process.waitFor();
    }

    private String err() throws IOException {
        return Files.readString(folder.resolve("err.txt"));
    }

    @Test
    void whatCannotBePrintedIsNoSuccess() throws Exception {
        assertEquals(1, shell("TOOL manners >&-"));
        assertTrue(err().startsWith("standard output: error [unwritable] It cannot be written."), err());
        Assumptions.assumeTrue(Files.exists(Path.of("/dev/full")), "skipped: no full device here");
        assertEquals(1, shell("TOOL instruments show dg-21 > /dev/full"));
        assertTrue(err().startsWith("standard output: error [unwritable]"), err());
    }

    @Test
    void closedStandardInputIsSaid() throws Exception {
        Assumptions.assumeTrue(Files.exists(Path.of("/proc/self/fd")), "skipped: not told by this system");
        assertEquals(1, shell("TOOL mark - <&-"));
        assertTrue(err().contains("Standard input cannot be read (it is closed)."), err());
    }

    /** A name that is no text in the characters of the computer stops neither the others nor the tool. */
    @Test
    void oneNameThatCannotBeReadIsRefusedAndTheOthersGoOn() throws Exception {
        Assumptions.assumeTrue("UTF-8".equals(System.getProperty("sun.jnu.encoding")), "skipped: no such names here");
        ScoreText.file(folder.resolve("in/café.musicxml"), "D5 E5 F#5 G5");
        ScoreText.file(folder.resolve("in/plain.musicxml"), "D5 E5 F#5 G5");
        assertEquals(1, shell("LC_ALL=C TOOL mark in --record --out marked"));
        assertTrue(err().contains("Its name is no text in the characters of this computer."), err());
        assertFalse(err().contains("Exception"), err());
        assertTrue(Files.exists(folder.resolve("marked/plain.musicxml")));
        assertFalse(Files.exists(folder.resolve("marked/café.musicxml")));
    }

    private static String hex(byte[] bytes) {
        return java.util.HexFormat.of().formatHex(bytes);
    }
}
