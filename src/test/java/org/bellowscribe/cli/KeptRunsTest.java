package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run does only what has changed since the results were written. */
class KeptRunsTest {

    private static final String GOOD = "D5 E5 F#5 G5 A5 B5 A5 G5";
    /** No button of the usual box gives G#4. */
    private static final String BAD = "D5 E5 F#5 G#4 A5 B5 A5 G5";

    @TempDir
    Path folder;

    @BeforeEach
    void book() throws IOException {
        ScoreText.file(folder.resolve("book/a.musicxml"), GOOD);
        ScoreText.file(folder.resolve("book/b.musicxml"), GOOD);
        ScoreText.file(folder.resolve("book/c.musicxml"), BAD);
    }

    private CommandRun mark(String... more) {
        List<String> words = new ArrayList<>(List.of("mark", folder + "/book", "--out", folder + "/out"));
        words.addAll(List.of(more));
        return CommandRun.of(words.toArray(String[]::new));
    }

    /** Returns the tunes that would be marked, each with the reason. */
    private Map<String, String> toDo(String... more) {
        List<String> words = new ArrayList<>(List.of(more));
        words.add("--dry-run");
        Map<String, String> reasons = new TreeMap<>();
        mark(words.toArray(String[]::new))
                .out()
                .lines()
                .filter(line -> line.startsWith(folder.toString()))
                .forEach(line -> {
                    int colon = line.indexOf(": ");
                    String files = line.substring(0, colon).replace(folder + "/out/", "");
                    reasons.put(files, line.substring(colon + 2));
                });
        return reasons;
    }

    private Map<String, String> results() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder.resolve("out"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                texts.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        return texts;
    }

    @Test
    void checkTellsThatAForgottenResultWouldComeOutOtherwise() throws IOException {
        mark();
        Files.delete(folder.resolve("out/.bellowscribe-results"));
        assertTrue(mark("--check").out().contains("\n0 would be marked; 2 as they are"));
        CommandRun run = mark("--check", "--style", "german");
        assertTrue(
                run.out().contains("a.musicxml: out of date, because it would come out otherwise today\n"), run.out());
    }

    @Test
    void tablesOfDifficultyAreToldOfUnchangedTunesToo() {
        String first = mark("--difficulty").out();
        assertTrue(first.contains("  Grade "), first);
        String second = mark("--difficulty").out();
        assertEquals(first.substring(0, first.indexOf("\n\n")), second.substring(0, second.indexOf("\n\n")));
    }

    private Path result(String name) {
        return folder.resolve("out").resolve(name);
    }

    @Test
    void firstRunIsNewAndTheSecondHasNothingToDo() {
        assertEquals(Map.of("a.musicxml", "it is new", "b.musicxml", "it is new", "c.musicxml", "it is new"), toDo());
        assertFalse(Files.exists(folder.resolve("out")), "a dry run writes nothing");
        mark();
        assertEquals(Map.of(), toDo());
        CommandRun again = mark();
        assertTrue(again.out().contains("0 tunes marked, 2 unchanged, 1 not marked"), again.out());
    }

    @Test
    void refusalIsToldAgainThoughNothingIsDecided() {
        mark();
        CommandRun again = mark();
        assertEquals(1, again.code());
        assertTrue(again.err().contains("error [no-button]"), again.err());
        assertTrue(again.out().contains("can be played with --transpose auto"), again.out());
    }

    @Test
    void unchangedRunTouchesNoFile() throws IOException {
        mark();
        FileTime time = Files.getLastModifiedTime(result("a.musicxml"));
        FileTime ledger = Files.getLastModifiedTime(result(".bellowscribe-results"));
        Map<String, String> before = results();
        mark();
        assertEquals(before, results());
        assertEquals(time, Files.getLastModifiedTime(result("a.musicxml")));
        assertEquals(ledger, Files.getLastModifiedTime(result(".bellowscribe-results")));
    }

    @Test
    void changedScoreIsAReason() throws IOException {
        mark();
        ScoreText.file(folder.resolve("book/a.musicxml"), GOOD.replace("B5", "C#6"));
        assertEquals(Map.of("a.musicxml", "the score has changed"), toDo());
    }

    @Test
    void changedPinsAreAReasonUnlessNoneCount() throws IOException {
        mark("--pins", "none");
        assertEquals(Map.of(), toDo("--pins", "none"));
        ScoreText.write(
                folder.resolve("book/b.pins.xml"), "<pins><pin measure=\"1\" note=\"1\" direction=\"pull\"/></pins>");
        assertEquals(Map.of(), toDo("--pins", "none"));
        Files.delete(folder.resolve("book/b.pins.xml"));
        mark();
        ScoreText.write(
                folder.resolve("book/b.pins.xml"), "<pins><pin measure=\"1\" note=\"1\" direction=\"pull\"/></pins>");
        assertEquals(Map.of("b.musicxml", "its pins have changed"), toDo());
    }

    @Test
    void resultThatIsGoneOrNotAsItWasWrittenIsAReason() throws IOException {
        mark();
        String reason = "b.musicxml is missing, or not as it was written";
        Files.writeString(result("b.musicxml"), "mine");
        assertEquals(Map.of("b.musicxml", reason), toDo());
        Files.delete(result("b.musicxml"));
        assertEquals(Map.of("b.musicxml", reason), toDo());
    }

    @Test
    void otherOptionsAreAReason() {
        mark();
        assertEquals(
                Map.of(
                        "a.musicxml", "the options are others",
                        "b.musicxml", "the options are others",
                        "c.musicxml", "the options are others"),
                toDo("--marks", "buttons"));
        assertEquals(Map.of(), toDo("--threads", "1", "--verbose"), "these change no result");
    }

    @Test
    void forcedRunHasOneReason() {
        mark();
        assertEquals(3, toDo("--force").size());
        assertTrue(toDo("--force").containsValue("everything is done anew"));
    }

    @Test
    void fileThatAnOptionNamesCountsByItsContent() throws IOException {
        String manner = ScoreText.write(
                folder.resolve("mine.xml"), "<manner id=\"mine\" based-on=\"learner\"><summary>A.</summary></manner>");
        mark("--manner", manner);
        assertEquals(Map.of(), toDo("--manner", manner));
        Files.writeString(Path.of(manner), Files.readString(Path.of(manner)).replace("A.", "B."));
        assertTrue(toDo("--manner", manner).containsValue("a file that the options name has changed"));
    }

    @Test
    void whatIsWrittenBesideAResultCountsToo() throws IOException {
        mark("--record");
        assertEquals(Map.of(), toDo("--record"));
        Files.delete(result("a.record.json"));
        assertEquals(
                Map.of("a.musicxml, a.record.json", "a.record.json is missing, or not as it was written"),
                toDo("--record"));
        mark("--record");
        assertTrue(Files.exists(result("a.record.json")));
    }

    @Test
    void runThatGoesOnEndsWithTheSameBytesAsOneThatWasNotDisturbed() throws IOException {
        mark();
        Map<String, String> whole = results();
        Path ledger = result(".bellowscribe-results");
        String lines = Files.readString(ledger);
        // As after a kill: one tune is noted, one only written, one line cut short.
        Files.writeString(ledger, lines.substring(0, lines.indexOf('\n') + 40));
        Files.delete(result("b.musicxml"));
        assertEquals(List.of("b.musicxml", "c.musicxml"), List.copyOf(toDo().keySet()));
        mark();
        assertEquals(whole, results());
    }

    @Test
    void forceMarksAnew() throws IOException {
        mark();
        Map<String, String> before = results();
        assertTrue(mark("--force").out().contains("2 tunes marked, 1 not marked"));
        assertEquals(before, results());
    }

    @Test
    void checkFailsIfAResultIsNotWhatItWouldBeAndWritesNothing() throws IOException {
        Files.delete(folder.resolve("book/c.musicxml"));
        mark();
        assertEquals(0, mark("--check").code());
        ScoreText.file(folder.resolve("book/a.musicxml"), GOOD.replace("B5", "C#6"));
        Map<String, String> before = results();
        CommandRun check = mark("--check");
        assertEquals(1, check.code());
        assertTrue(check.out().contains("a.musicxml: out of date, because the score has changed"), check.out());
        assertTrue(
                check.out().contains("1 out of date; 1 as they are, 0 not marked. Nothing was written."), check.out());
        assertEquals(before, results());
    }

    @Test
    void checkComparesBytesWhereNothingIsRemembered() throws IOException {
        Files.delete(folder.resolve("book/c.musicxml"));
        mark();
        Files.delete(result(".bellowscribe-results"));
        assertEquals(0, mark("--check").code());
        Files.writeString(result("a.musicxml"), "mine");
        assertEquals(1, mark("--check").code());
        assertFalse(Files.exists(result(".bellowscribe-results")));
    }

    @Test
    void diffTellsWhichMarksAreOthers() throws IOException {
        mark();
        CommandRun run = mark("--diff", "--style", "two-lines");
        assertTrue(
                run.out().lines().anyMatch(line -> line.matches("  measure 1, note 1, buttons: .+, before .+")),
                run.out());
        assertTrue(mark("--diff", "--force", "--style", "two-lines").out().contains("no mark has changed"));
    }

    @Test
    void resultsInPlaceAreMarkedAgainAndCanBeChecked() throws IOException {
        String score = folder + "/book/a.musicxml";
        CommandRun.of("mark", score, "--in-place");
        try (Stream<Path> files = Files.list(folder.resolve("book"))) {
            assertEquals(3, files.count(), "nothing else is written");
        }
        assertEquals(0, CommandRun.of("mark", score, "--in-place", "--check").code());
        assertEquals(
                1,
                CommandRun.of("mark", score, "--in-place", "--check", "--marks", "buttons")
                        .code());
    }

    @Test
    void sharesTogetherEndWithTheSameResultsAsTheWhole() throws IOException {
        mark();
        Map<String, String> whole = results();
        whole.remove(".bellowscribe-results");
        for (String name : List.copyOf(results().keySet())) {
            Files.delete(result(name));
        }
        mark("--shard", "1/2");
        mark("--shard", "2/2");
        Map<String, String> shares = results();
        shares.keySet().removeIf(name -> name.startsWith("."));
        assertEquals(whole, shares);
        assertEquals(Map.of(), toDo(), "the whole knows what the shares have done");
    }

    @Test
    void whatDoesNotGoTogetherIsWrongUse() {
        assertEquals(2, mark("--dry-run", "--check").code());
        assertEquals(2, mark("--dry-run", "--diff").code());
        String score = folder + "/book/a.musicxml";
        assertEquals(
                2, CommandRun.of("mark", score, "--explain", "1", "--check").code());
        assertEquals(2, CommandRun.piped(new byte[0], "mark", "-", "--force").code());
    }
}
