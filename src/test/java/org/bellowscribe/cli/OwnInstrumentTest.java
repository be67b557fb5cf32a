package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Instruments that a stranger adds: one file each, no code. */
class OwnInstrumentTest {

    @TempDir
    Path folder;

    private void assertUseful(String file) {
        CommandRun check = CommandRun.of("instruments", "check", file);
        assertEquals(0, check.code(), check.err());
        assertTrue(check.out().contains(" can be used;"), check.out());
        assertEquals(0, CommandRun.of("instruments", "show", file).code());
        assertEquals(0, CommandRun.of("instruments", "ranges", file).code());
        CommandRun mark = CommandRun.of(
                "mark",
                "samples/book/two-ducks.musicxml",
                "--instrument",
                file,
                "--transpose",
                "auto",
                "--out",
                folder + "/out");
        assertEquals(0, mark.code(), mark.err());
    }

    @Test
    void exampleOfTheReadmeIsOneFileThatWorks() throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        String from = readme.substring(readme.indexOf("    <instrument id="));
        String example = from.substring(0, from.indexOf("</instrument>") + 13).replaceAll("(?m)^ {4}", "");
        Path file = Files.writeString(folder.resolve("my-box.xml"), example);
        assertUseful(file.toString());
        String drawing = CommandRun.of("instruments", "show", file.toString()).out();
        assertTrue(drawing.contains("row 3"), drawing);
    }

    @ParameterizedTest
    @ValueSource(strings = {"left-handed", "two-and-a-half-rows"})
    void sampleInstrumentsWork(String name) {
        assertUseful("samples/instruments/" + name + ".xml");
    }
}
