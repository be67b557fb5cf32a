package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The last lines of a run say what became of the tunes and what to do next. */
class EndOfRunTest {

    private static final String GOOD = "D5 E5 F#5 G5 A5 B5 A5 G5";
    /** No button of the usual box gives G#4. */
    private static final String BAD = "D5 E5 F#5 G#4 A5 B5 A5 G5";

    @TempDir
    Path folder;

    private String book() throws IOException {
        ScoreText.file(folder.resolve("book/a.musicxml"), GOOD);
        ScoreText.write(folder.resolve("book/b.musicxml"), ScoreText.of("The Odd One", BAD));
        ScoreText.write(folder.resolve("book/c.musicxml"), ScoreText.of("The Even One", GOOD));
        return folder.resolve("book").toString();
    }

    private static List<String> lastLines(CommandRun run, int count) {
        List<String> lines = run.out().lines().toList();
        return lines.subList(lines.size() - count, lines.size());
    }

    @Test
    void resultsAreNamedAndWhatToDoWithThem() throws IOException {
        Path out = folder.resolve("out");
        CommandRun run = CommandRun.of("mark", book(), "--out", out.toString());
        assertEquals(
                List.of(
                        "not marked because no button gives a note [no-button]: 1",
                        "  The Odd One (" + folder.resolve("book/b.musicxml") + ")",
                        "  Maybe --transpose auto; fit ranks all keys and instruments.",
                        "1 of the tunes not marked can be played with --transpose auto.",
                        "Open one of the 2 results in a notation program, such as " + out.resolve("a.musicxml")),
                lastLines(run, 5));
        CommandRun one = CommandRun.of("mark", folder.resolve("book/a.musicxml").toString(), "--out", out.toString());
        assertEquals(List.of("Open the result in a notation program: " + out.resolve("a.musicxml")), lastLines(one, 1));
    }

    @Test
    void theDemoBookIsMarkedWholeAndTheRefusedTuneStandsByItself() {
        CommandRun book = CommandRun.of("mark", "samples/book", "--out", folder + "/marked");
        assertEquals(0, book.code(), book.err());
        assertTrue(book.out().contains("\n25 tunes marked, 0 not marked;"), book.out());
        CommandRun refused = CommandRun.of("mark", "samples/refused", "--out", folder + "/refused");
        assertEquals(1, refused.code());
        assertTrue(refused.out().contains("\n0 tunes marked, 1 not marked;"), refused.out());
    }

    @Test
    void wayOutIsThatOfTheErrorWhereOneCodeHasManyCauses() throws IOException {
        String missing = folder + "/nothing.musicxml";
        CommandRun run = CommandRun.of("mark", missing, "--out", folder + "/out");
        assertEquals(
                List.of(
                        "not marked because no score can be read from it [unreadable]: 1",
                        "  " + missing,
                        "  Maybe it lies in another folder than " + folder + "."),
                lastLines(run, 3));
        String none = "  " + book();
        run = CommandRun.of("mark", book(), "--exclude", "*", "--out", folder + "/out");
        assertEquals(List.of(none), lastLines(run, 1));
        run = CommandRun.of("mark", missing, book(), "--exclude", "*", "--out", folder + "/out");
        assertEquals(List.of(none, "  What to do about each stands with its error."), lastLines(run, 2));
    }

    @Test
    void whatCanBePlayedTransposedIsPlayedSo() throws IOException {
        CommandRun run = CommandRun.of("mark", book(), "--transpose", "auto", "--out", folder + "/out");
        assertEquals(0, run.code(), run.err());
        assertFalse(run.out().contains("--transpose auto"), run.out());
    }

    @Test
    void refusedTunesAreListedByTheirTitles() throws IOException {
        CommandRun run = CommandRun.of("mark", book(), "--out", folder + "/out");
        assertTrue(
                run.out().lines().anyMatch(line -> line.matches("The Odd One +not marked \\[no-button]")), run.out());
    }

    @Test
    void notesThatAreNoNewsAreCountedInARunOfManyFiles() throws IOException {
        String notesBy = "<sound tempo=\"120\"/>";
        for (String name : List.of("a", "b")) {
            ScoreText.write(
                    folder.resolve("book/" + name + ".musicxml"),
                    ScoreText.of(name, GOOD).replace(notesBy, ""));
        }
        String[] many = {"mark", folder + "/book", "--out", folder + "/out"};
        CommandRun run = CommandRun.of(many);
        assertEquals("4 notes about what was assumed, such as a tempo; --verbose shows them.\n", run.err());
        CommandRun all = CommandRun.of("mark", folder + "/book", "--out", folder + "/out", "--verbose");
        assertEquals(
                4,
                all.err()
                        .lines()
                        .filter(line -> line.contains("note [assumed]"))
                        .count(),
                all.err());
        CommandRun one = CommandRun.of("mark", folder + "/book/a.musicxml", "--out", folder + "/out");
        assertTrue(one.err().contains("note [assumed]"), one.err());
        assertEquals(
                "",
                CommandRun.of("mark", folder + "/book", "--out", folder + "/out", "--quiet")
                        .err());
        assertEquals(
                2,
                CommandRun.of("mark", folder + "/book", "--out", folder + "/o", "--quiet", "--verbose")
                        .code());
    }

    @Test
    void quietRunPrintsNothingIfNothingIsWrong() throws IOException {
        String score = ScoreText.file(folder.resolve("a.musicxml"), GOOD);
        CommandRun run = CommandRun.of("mark", score, "--quiet", "--out", folder + "/out");
        assertEquals(new CommandRun(0, "", ""), run);
        CommandRun bad = CommandRun.of("mark", book(), "--quiet", "--out", folder + "/out");
        assertEquals("", bad.out());
        assertTrue(bad.err().contains("error [no-button]"), bad.err());
    }

    @Test
    void oneOfAThingIsNotSaidAsIfItWereMany() throws IOException {
        String score = ScoreText.file(folder.resolve("a.musicxml"), GOOD);
        CommandRun run = CommandRun.of("mark", score, "--out", folder + "/out");
        assertFalse(run.out().matches("(?s).*\\b1 (measures|air marks).*"), run.out());
    }

    @Test
    void aKeyWithManySignsIsNotProposedWithoutAWord() throws IOException {
        String score = ScoreText.file(folder.resolve("a.musicxml"), GOOD);
        CommandRun fit = CommandRun.of("fit", score, "--transpose", "4", "--best", "0", "--instrument", "bc-21");
        assertTrue(fit.out().contains("6 sharps") || fit.out().contains("6 flats"), fit.out());
        CommandRun few = CommandRun.of("fit", score, "--transpose", "5", "--best", "0", "--instrument", "bc-21");
        assertFalse(few.out().contains("sharp"), few.out());
    }
}
