package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PatternOptionTest {

    private static final String WALTZ = "samples/the-leaning-gate.musicxml";

    @TempDir
    Path folder;

    private String marked(String... patterns) throws IOException {
        String out = folder.resolve("out").toString();
        CommandRun run = patterns.length == 0
                ? CommandRun.of("mark", WALTZ, "--out", out)
                : CommandRun.of("mark", WALTZ, "--out", out, "--pattern", patterns[0]);
        assertEquals(0, run.code(), run.err());
        return Files.readString(folder.resolve("out").resolve("the-leaning-gate.musicxml"));
    }

    @Test
    void usualPatternCanBeNamedByTimeToo() throws IOException {
        assertEquals(marked(), marked("off-beat,3/4=bass-chord-chord"));
    }

    @Test
    void firstBeatLeavesTheChordsOut() throws IOException {
        String sheet = marked("first-beat");
        assertTrue(sheet.contains("<text>D</text>"));
        assertFalse(sheet.contains("<text>d</text>"));
    }

    @Test
    void ownPatternIsAFile() throws IOException {
        Path own = folder.resolve("own.xml");
        Files.writeString(own, """
                <pattern id="own" beats="3">
                  <summary>Bass, chord, chord.</summary>
                  <stroke beat="1" sound="bass"/>
                  <stroke beat="2" sound="chord"/>
                  <stroke beat="3" sound="chord"/>
                </pattern>
                """);
        assertEquals(marked(), marked(own.toString()));
    }

    @Test
    void wrongValueInAPatternFileHasItsPlaceAndForm() throws IOException {
        Path own = folder.resolve("own.xml");
        Files.writeString(own, """
                <pattern id="own">
                  <summary>Wrong.</summary>
                  <stroke beat="0" sound="bass"/>
                </pattern>
                """);
        CommandRun run = CommandRun.of("patterns", "show", own.toString());
        assertEquals(1, run.code());
        assertTrue(run.err().contains("line 3"), run.err());
        assertTrue(run.err().contains("a beat counted from 1"), run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"waltz", "9-3=sustained", "x=sustained", "3/4=", ""})
    void wrongListsAreRefused(String list) {
        CommandRun run = CommandRun.of("mark", WALTZ, "--out", folder.toString(), "--pattern", list);
        assertEquals(2, run.code(), list);
        assertTrue(run.err().contains("--pattern"), run.err());
    }

    @Test
    void patternIsShownInTheUsualTimes() {
        CommandRun run = CommandRun.of("patterns", "show", "jig");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("6/8: bass 1, chord 2, bass 5/2, chord 7/2"), run.out());
    }
}
