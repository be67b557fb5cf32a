package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PatternOptionTest {

    private static final String WALTZ = "samples/book/the-leaning-gate.musicxml";

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
    void aPatternForWhatTheTuneHasNotIsSaid() {
        CommandRun run = CommandRun.of(
                "mark",
                WALTZ,
                "--pattern",
                "off-beat,6/8=jig,99=sustained,70-80=sustained,3/4=off-beat-waltz",
                "--out",
                folder.toString());
        assertEquals(0, run.code(), run.err());
        assertEquals(
                List.of(
                        "The pattern jig is for 6/8, and the tune has none such.",
                        "The pattern sustained is for measure 99, and the tune has none such.",
                        "The pattern sustained is for measures 70 to 80, and the tune has none such."),
                run.err()
                        .lines()
                        .filter(line -> line.contains("[left-hand]"))
                        .map(line -> line.substring(line.indexOf("] ") + 2))
                        .toList());
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
