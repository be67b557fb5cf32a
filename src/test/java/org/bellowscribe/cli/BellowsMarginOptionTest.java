package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bellowscribe.report.JsonTree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BellowsMarginOptionTest {

    @TempDir
    Path folder;

    private CommandRun mark(String margin) {
        return CommandRun.of(
                "mark",
                "samples/book/pump-sunday.musicxml",
                "--record",
                "--out",
                folder.toString(),
                "--bellows-margin",
                margin);
    }

    private Object bellows() throws IOException {
        return JsonTree.get(JsonTree.read(Files.readString(folder.resolve("pump-sunday.record.json"))), "bellows");
    }

    private static double number(Object tree, String name) {
        return ((Number) JsonTree.get(tree, name)).doubleValue();
    }

    @Test
    void openingsStayWithinTheMargin() throws IOException {
        CommandRun run = mark("25");
        assertEquals(0, run.code(), run.err());
        assertEquals(32, number(bellows(), "capacity"), 1e-9);
        assertEquals(32 * 0.205, number(bellows(), "lowest"), 1e-9);
        assertEquals(32 * 0.795, number(bellows(), "highest"), 1e-9);
    }

    @Test
    void wrongMarginsAreExplained() {
        for (String wrong : new String[] {"51", "-1", "5.5", "wide", "100"}) {
            CommandRun run = mark(wrong);
            assertEquals(2, run.code(), wrong);
            assertTrue(
                    run.err().contains("--bellows-margin takes a whole number of percent from 0 to 50, not " + wrong),
                    run.err());
        }
    }
}
