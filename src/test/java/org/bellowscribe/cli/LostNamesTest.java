package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Marks of golden pairs read back: none seems changed, and none is doubled where a program has dropped our names. */
class LostNamesTest {

    private static final Path GOLDEN = Path.of("src", "test", "resources", "org", "bellowscribe", "golden");

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    private CommandRun mark(String pair, String names, String... more) throws IOException {
        Path from = GOLDEN.resolve(pair);
        String marked = Files.readString(from.resolve("expected.musicxml"));
        Files.writeString(folder.resolve("tune.musicxml"), marked.replaceAll(names, ""));
        Path pins = from.resolve("input.pins.xml");
        if (Files.exists(pins)) {
            Files.copy(pins, folder.resolve("tune.pins.xml"));
        }
        List<String> words = new ArrayList<>(List.of(
                "mark",
                folder.resolve("tune.musicxml").toString(),
                "--out",
                folder.resolve("out").toString()));
        Path options = from.resolve("options.txt");
        if (Files.exists(options)) {
            words.addAll(List.of(Files.readString(options).strip().split(" ")));
        }
        words.addAll(List.of(more));
        CommandRun run = CommandRun.of(words.toArray(String[]::new));
        assertEquals(0, run.code(), run.err());
        assertEquals(marked, Files.readString(folder.resolve("out/tune.musicxml")));
        return run;
    }

    @ParameterizedTest
    @ValueSource(strings = {"91-air-joined", "93-marks-rows", "94-grace-at-measure-end"})
    void marksWithoutNamesAreKnownAgain(String pair) throws IOException {
        CommandRun run = mark(pair, " (id|name)=\"bellowscribe-[^\"]*\"");
        assertTrue(run.err().contains("are taken for ours"), run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"91-air-joined", "93-marks-rows", "94-grace-at-measure-end"})
    void marksAsWrittenAreNoEdits(String pair) throws IOException {
        CommandRun run = mark(pair, "nothing", "--keep-edits");
        assertTrue(run.err().contains("No mark differs from what the tool writes"), run.err());
    }

    @Test
    void aDashBehindNoPressIsTold() throws IOException {
        Path from = GOLDEN.resolve("91-air-joined");
        String marked = Files.readString(from.resolve("expected.musicxml")).replaceFirst(">air<", ">push<");
        Files.writeString(folder.resolve("tune.musicxml"), marked);
        CommandRun run = CommandRun.of(
                "mark",
                folder.resolve("tune.musicxml").toString(),
                "--out",
                folder.resolve("out").toString(),
                "--keep-edits");
        assertTrue(run.err().contains("The mark \"—\""), run.err());
    }
}
