package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MannersCommandTest {

    private static final String TUNE = "samples/book/the-ferry-bell.musicxml";

    @TempDir
    Path folder;

    @Test
    void listNamesEveryMannerWithItsSentence() {
        CommandRun run = CommandRun.of("manners");
        assertEquals(0, run.code());
        MannerLibrary.all()
                .forEach(manner -> assertTrue(
                        run.out()
                                .lines()
                                .anyMatch(line -> line.contains(manner.id()) && line.endsWith(manner.summary())),
                        run.out()));
        assertEquals(run, CommandRun.of("manners", "list"));
    }

    @Test
    void showTellsThePointsBesideTheUsualOnes() {
        CommandRun run = CommandRun.of("manners", "show", "across-the-rows");
        assertEquals(0, run.code());
        assertTrue(run.out().contains("row-change: Going over to another row costs by the time there is."), run.out());
        assertTrue(run.out().contains("  slow 1 (5), medium 1 (4), quick 1 (5), very-quick 2 (5)\n"), run.out());
        assertTrue(run.out().contains("finger-stretch"), run.out());
    }

    @Test
    void learnerIsToldNotToForceTheBellows() {
        String out = CommandRun.of("manners", "show", "learner").out();
        assertTrue(out.contains("Never force the bellows"), out);
        assertTrue(out.contains("ask a teacher or a health professional"), out);
    }

    @Test
    void ownMannerIsAFile() throws IOException {
        Path file = folder.resolve("smooth.xml");
        Files.writeString(file, """
                <manner id="smooth" based-on="along-the-row">
                  <summary>Reversals are what I cannot do yet.</summary>
                  <rule id="bellows-reversal"><points case="slow">40</points><points case="medium">50</points></rule>
                </manner>
                """);
        CommandRun shown = CommandRun.of("manners", "show", file.toString());
        assertTrue(shown.out().contains("slow 40 (2), medium 50 (3), quick 5"), shown.out());
        CommandRun usual = mark("usual");
        CommandRun smooth = mark("smooth", "--manner", file.toString());
        assertEquals(0, smooth.code(), smooth.err());
        assertNotEquals(usual.out(), smooth.out());
    }

    private CommandRun mark(String target, String... more) {
        String[] words = {"mark", TUNE, "--out", folder.resolve(target).toString(), "", ""};
        System.arraycopy(more, 0, words, 4, more.length);
        return CommandRun.of(more.length == 0 ? java.util.Arrays.copyOf(words, 4) : words);
    }

    @Test
    void misspelledMannerIsNamedWithTheNearest() {
        CommandRun run = mark("wrong", "--manner", "lerner");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("The library has no manner lerner."), run.err());
        assertTrue(run.err().contains("Maybe learner."), run.err());
        CommandRun shown = CommandRun.of("manners", "show", "lerner");
        assertEquals(2, shown.code());
        assertTrue(run.err().startsWith("--manner " + shown.err()), shown.err());
    }

    @Test
    void mistakesOfAMannerFileAreToldWithTheirLines() throws IOException {
        Path file = folder.resolve("wrong.xml");
        Files.writeString(file, """
                <manner id="wrong" based-on="along-the-rows">
                  <summary>Three mistakes.</summary>
                  <rule id="hand-shifts"><points case="slow">1</points></rule>
                  <rule id="hand-shift"><points case="fast">1</points></rule>
                </manner>
                """);
        CommandRun run = mark("wrong", "--manner", file.toString());
        assertEquals(2, run.code());
        assertEquals(
                3,
                run.err()
                        .lines()
                        .filter(line -> line.contains("[bad-definition]"))
                        .count(),
                run.err());
        assertTrue(run.err().contains("Maybe along-the-row is meant."), run.err());
        assertTrue(run.err().contains("Maybe hand-shift is meant."), run.err());
        assertTrue(run.err().contains("line 4,"), run.err());
    }

    @Test
    void missingMannerFileIsNamed() {
        CommandRun run = mark("wrong", "--manner", folder.resolve("nothing.xml").toString());
        assertEquals(2, run.code());
        assertTrue(run.err().contains("The manner file cannot be read"), run.err());
    }

    @Test
    void wrongWordsAreNamed() {
        assertEquals(2, CommandRun.of("manners", "show").code());
        assertTrue(CommandRun.of("manners", "shwo", "learner").err().contains("Maybe show is meant."));
    }

    @Test
    void rowsASemitoneApartArePlayedAcrossUnlessALineSaysOtherwise() throws IOException {
        assertTrue(record("--instrument", "bc-21").contains("\"manner\": \"across-the-rows\""));
        assertTrue(
                record("--instrument", "bc-21", "--manner", "along-the-row").contains("\"manner\": \"along-the-row\""));
        assertTrue(record().contains("\"manner\": \"along-the-row\""));
    }

    @Test
    void mannerThatAnInstrumentFileNamesWronglyIsAnsweredWithTheNearest() throws IOException {
        Path file = folder.resolve("box.xml");
        Files.writeString(file, "<instrument id=\"box\" name=\"Box\" base=\"dg-21\" manner=\"across-the-row\"/>");
        CommandRun run = CommandRun.of(
                "mark",
                TUNE,
                "--instrument",
                file.toString(),
                "--out",
                folder.resolve("out").toString());
        assertEquals(2, run.code());
        assertTrue(run.err().contains("across-the-rows"), run.err());
    }

    private String record(String... words) throws IOException {
        Path out = folder.resolve("record");
        List<String> line =
                new ArrayList<>(List.of("mark", TUNE, "--record", "--transpose", "auto", "--out", out.toString()));
        line.addAll(List.of(words));
        CommandRun run = CommandRun.of(line.toArray(String[]::new));
        assertEquals(0, run.code(), run.err());
        return Files.readString(out.resolve("the-ferry-bell.record.json"));
    }
}
