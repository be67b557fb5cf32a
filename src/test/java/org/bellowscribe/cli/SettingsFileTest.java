package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Settings files beside tunes and above them. */
class SettingsFileTest {

    private static final String GOOD = "D5 E5 F#5 G5 A5 B5 A5 G5";

    @TempDir
    Path folder;

    @BeforeEach
    void book() throws IOException {
        ScoreText.file(folder.resolve("book/a.musicxml"), GOOD);
        ScoreText.file(folder.resolve("book/slow/b.musicxml"), GOOD);
        // What lies above the folder of the test is nobody's business here.
        ScoreText.write(folder.resolve("bellowscribe.xml"), "<settings root=\"yes\"/>");
    }

    private void settings(String below, String text) throws IOException {
        ScoreText.write(folder.resolve("book").resolve(below).resolve("bellowscribe.xml"), text);
    }

    private CommandRun mark(String... more) {
        List<String> words = new ArrayList<>(List.of("mark", folder + "/book", "--out", folder + "/out"));
        words.addAll(List.of(more));
        return CommandRun.of(words.toArray(String[]::new));
    }

    private void assertWrong(String settings, String... remarks) throws IOException {
        settings("", settings);
        CommandRun run = mark();
        assertEquals(2, run.code(), run.err());
        for (String remark : remarks) {
            assertTrue(run.err().contains(remark), run.err());
        }
        assertFalse(Files.exists(folder.resolve("out")));
    }

    /** Returns what is printed of the settings, without the last line and with spaces run together. */
    private List<String> printed(String... more) {
        List<String> words = new ArrayList<>(List.of("mark", folder + "/book", "--print-settings"));
        words.addAll(List.of(more));
        CommandRun run = CommandRun.of(words.toArray(String[]::new));
        assertEquals(0, run.code(), run.err());
        List<String> lines = run.out()
                .lines()
                .map(line -> line.strip().replaceAll(" +", " ").replace(folder + "/", ""))
                .toList();
        return lines.subList(0, lines.size() - 1);
    }

    @Test
    void optionsHoldForAllScoresBelow() throws IOException {
        settings("", "<settings record=\"yes\" marks=\"buttons\"/>");
        assertEquals(0, mark().code());
        assertTrue(Files.exists(folder.resolve("out/slow/b.record.json")));
        assertFalse(Files.readString(folder.resolve("out/a.musicxml")).contains("bellowscribe-left-hand"));
    }

    @Test
    void nearerFileGoesBeforeTheFartherAndTheLineBeforeBoth() throws IOException {
        settings("", "<settings manner=\"learner\" times=\"once\"/>");
        settings("slow", "<settings manner=\"chords-first\"/>");
        assertEquals(
                List.of(
                        "book/a.musicxml",
                        "manner learner book/bellowscribe.xml",
                        "times again the command line",
                        "book/slow/b.musicxml",
                        "manner chords-first book/slow/bellowscribe.xml",
                        "times again the command line"),
                printed("--times", "again"));
    }

    @Test
    void tunesMayBeExceptions() throws IOException {
        settings("", "<settings times=\"once\"><tune file=\"slow/*\" times=\"again\" record=\"yes\"/></settings>");
        assertEquals(
                List.of(
                        "book/a.musicxml",
                        "times once book/bellowscribe.xml",
                        "book/slow/b.musicxml",
                        "times again book/bellowscribe.xml",
                        "record yes book/bellowscribe.xml"),
                printed());
        mark();
        assertTrue(Files.exists(folder.resolve("out/slow/b.record.json")));
        assertFalse(Files.exists(folder.resolve("out/a.record.json")));
    }

    @Test
    void tunesForWhichTheSameHoldsStandTogether() {
        assertEquals(List.of("book/a.musicxml and 1 more", "all as usual"), printed());
    }

    @Test
    void nothingAboveARootCounts() throws IOException {
        settings("", "<settings times=\"once\"/>");
        settings("slow", "<settings root=\"yes\"/>");
        assertEquals(
                List.of("book/a.musicxml", "times once book/bellowscribe.xml", "book/slow/b.musicxml", "all as usual"),
                printed());
    }

    @Test
    void pathsGoFromTheFolderOfTheFile() throws IOException {
        ScoreText.write(
                folder.resolve("book/mine.xml"),
                "<manner id=\"mine\" based-on=\"learner\"><summary>A.</summary></manner>");
        settings("", "<settings manner=\"mine.xml\" pattern=\"3/4=bass-chord-chord\"/>");
        CommandRun run = mark();
        assertEquals(0, run.code(), run.err());
    }

    @Test
    void answerNoTakesBackWhatAFileAboveSays() throws IOException {
        settings("", "<settings record=\"yes\"/>");
        settings("slow", "<settings record=\"no\"/>");
        mark();
        assertTrue(Files.exists(folder.resolve("out/a.record.json")));
        assertFalse(Files.exists(folder.resolve("out/slow/b.record.json")));
    }

    @Test
    void unknownOptionIsAnsweredWithTheNearest() throws IOException {
        assertWrong(
                "<settings>\n<tune file=\"a*\" instrumnet=\"gc-21\"/></settings>",
                "bellowscribe.xml: line 2, column ",
                "There is no option instrumnet.",
                "Maybe instrument is meant.");
    }

    @Test
    void optionOfARunBelongsOnTheLine() throws IOException {
        for (String name : List.of(
                "out",
                "in-place",
                "force",
                "dry-run",
                "check",
                "diff",
                "watch",
                "print-settings",
                "report",
                "explain")) {
            assertWrong(
                    "<settings %s=\"yes\"/>".formatted(name),
                    "The option %s is about a run, not about tunes.".formatted(name),
                    "Give it on the command line.");
        }
    }

    @Test
    void onlyTheFileThatHasTheWrongValueIsNamed() throws IOException {
        settings("slow", "<settings times=\"once\"/>");
        assertWrong("<settings style=\"germam\"/>", "This comes from " + folder + "/book/bellowscribe.xml.\n");
    }

    @Test
    void printedSettingsAreNoJson() {
        CommandRun run = CommandRun.of("mark", folder + "/book", "--print-settings", "--json");
        assertEquals(2, run.code(), run.out());
        assertTrue(run.err().contains("--print-settings prints lines for people"), run.err());
    }

    @Test
    void valueThatIsNotTakenNamesTheFile() throws IOException {
        assertWrong("<settings times=\"twice\"/>", "--times takes again or once, not twice.", "This comes from ");
        assertWrong("<settings record=\"maybe\"/>", "record takes yes or no, not maybe.");
    }

    @Test
    void whatIsNoSettingsFileIsSaidWithItsPlace() throws IOException {
        assertWrong("<setings/>", "bellowscribe.xml: line 1, column ", "error [bad-definition]");
        assertWrong(
                "times=once", "bellowscribe.xml: line 1, column 1: error [not-xml] Text stands before the first tag.");
        assertWrong(
                "<settings times=once/>",
                "bellowscribe.xml: line 1, column 17: error [not-xml] The value of times in <settings> does not stand in"
                        + " quotes.",
                "  Write times=\"...\", with straight quotes.");
    }

    @Test
    void changedSettingsAreAReasonToMarkAnew() throws IOException {
        settings("slow", "<settings times=\"again\"/>");
        mark();
        settings("slow", "<settings times=\"once\"/>");
        CommandRun run = mark("--dry-run");
        assertTrue(run.out().contains("slow/b.musicxml: the options are others"), run.out());
        assertTrue(run.out().contains("1 would be marked; 1 as they are"), run.out());
    }

    @Test
    void questionAloneWritesNothingWhateverTheFileSays() throws IOException {
        settings("", "<settings record=\"yes\"/>");
        CommandRun run = CommandRun.of("mark", folder + "/book/a.musicxml", "--explain", "1:1");
        assertEquals(0, run.code(), run.err());
        assertFalse(Files.exists(folder.resolve("book/a.record.json")));
    }

    @Test
    void anExceptionForATuneThatIsNotThereIsToldWithTheNearest() throws IOException {
        settings("", """
                <settings>
                  <tune file="slow/*" times="once"/>
                  <tune file="slow/bb.musicxml" times="once"/>
                  <tune file="b" times="once"/>
                  <tune file="waltz-*" times="once"/>
                </settings>
                """);
        CommandRun run = mark();
        assertEquals(0, run.code(), run.err());
        String file = folder + "/book/bellowscribe.xml: ";
        assertEquals("""
                line 3, column 47: note [unknown-name] <tune file="slow/bb.musicxml"> holds for no score.
                  Maybe slow/b.musicxml.
                line 4, column 32: note [unknown-name] <tune file="b"> holds for no score.
                  Maybe slow/b.musicxml.
                line 5, column 38: note [unknown-name] <tune file="waltz-*"> holds for no score.
                  Maybe the score has another name now, or its path is not seen from the folder of this file.
                """, strayLines(run).replace(file, ""));
        assertEquals("", strayLines(mark("--quiet", "--force")));
        assertEquals(3, mark("--json").out().split("holds for no score", -1).length - 1);
        assertEquals(strayLines(run), strayLines(mark("--print-settings")));
    }

    /** Returns what is told of exceptions without a score, and what is advised. */
    private static String strayLines(CommandRun run) {
        StringBuilder lines = new StringBuilder();
        boolean told = false;
        for (String line : run.err().lines().toList()) {
            told = line.contains("bellowscribe.xml: line") || (told && line.startsWith("  "));
            lines.append(told ? line + "\n" : "");
        }
        return lines.toString();
    }

    @Test
    void ofAPartOfTheFolderNoExceptionIsStray() throws IOException {
        settings("", "<settings><tune file=\"nowhere.musicxml\" times=\"once\"/></settings>");
        assertTrue(strayLines(mark()).contains("nowhere.musicxml"));
        assertEquals("", strayLines(mark("--include", "a*")));
        assertEquals("", strayLines(mark("--shard", "1/2")));
        for (String part : List.of("/book/slow", "/book/a.musicxml", "/book/*.musicxml")) {
            assertEquals("", strayLines(CommandRun.of("mark", folder + part, "--out", folder + "/out2")), part);
        }
    }

    @Test
    void anExceptionInAFolderBelowIsStrayInItsOwnFolder() throws IOException {
        settings("slow", "<settings><tune file=\"a.musicxml\" times=\"once\"/></settings>");
        assertTrue(strayLines(mark()).contains("slow/bellowscribe.xml: line 1, column 49: note"), mark().err());
    }
}
