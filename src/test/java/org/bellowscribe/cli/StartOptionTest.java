package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bellowscribe.report.JsonTree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StartOptionTest {

    @TempDir
    Path folder;

    private CommandRun mark(String percent) {
        return CommandRun.of(
                "mark",
                "samples/book/pump-sunday.musicxml",
                "--record",
                "--out",
                folder.toString(),
                "--start-open",
                percent);
    }

    @ParameterizedTest
    @ValueSource(ints = {20, 80})
    void theTuneBeginsAsOpenAsAsked(int percent) throws IOException {
        CommandRun run = mark(String.valueOf(percent));
        assertEquals(0, run.code(), run.err());
        Object bellows =
                JsonTree.get(JsonTree.read(Files.readString(folder.resolve("pump-sunday.record.json"))), "bellows");
        double start = ((Number) JsonTree.get(bellows, "openingAtStart")).doubleValue();
        double capacity = ((Number) JsonTree.get(bellows, "capacity")).doubleValue();
        assertEquals(percent / 100.0, start / capacity, 1e-3);
    }

    @Test
    void openingsBeyondTheBellowsAreExplained() {
        for (String wrong : new String[] {"99", "1", "-5", "half"}) {
            CommandRun run = mark(wrong);
            assertEquals(2, run.code(), wrong);
            assertTrue(run.err().contains("--start-open takes a whole number of percent from 8 to 92"), run.err());
        }
    }

    @Test
    void helpSaysHowFarOneCanGo() {
        String help = CommandRun.of("mark", "--help").out().replaceAll("\\s+", " ");
        assertTrue(help.contains("the ends, which are kept in reserve (8 to 92 on the usual box)"), help);
    }
}
