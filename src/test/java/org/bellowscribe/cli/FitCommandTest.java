package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.report.JsonTree;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FitCommandTest {

    private static final String SCALE = "D4 E4 F#4 G4 A4 B4 C#5 D5 D4 D4 D4 D4";

    @TempDir
    Path folder;

    private String scale() throws IOException {
        return ScoreText.file(folder.resolve("in/scale.xml"), SCALE);
    }

    private static List<String> lines(CommandRun run) {
        return run.out().lines().toList();
    }

    @Test
    void boxInTheKeyOfTheTuneComesFirstAndTheFirstFailureHasItsReason() throws IOException {
        CommandRun run = CommandRun.of("fit", scale(), "--instrument", "c-10,d-10", "--transpose", "0", "--solve", "1");
        assertEquals(0, run.code(), run.err());
        assertTrue(lines(run).get(0).startsWith("scale, in D ("), run.out());
        assertTrue(lines(run).get(1).matches(" +d-10 +0 +D +fits +cost \\d+"), run.out());
        assertEquals("  1 of 2 fit", lines(run).get(2));
        assertEquals(
                "  first to fail: c-10 as written: measure 1, part P1: No button of one-row C, 10 buttons, 2 spoons"
                        + " gives F#4.",
                lines(run).get(3));
    }

    /** In 4/4 the learner's manner names a pattern of its own too. */
    @Test
    void costIsThatOfMarkInTheSameManner() throws IOException {
        String sample = "samples/book/down-the-cellar-steps.musicxml";
        for (String manner : List.of("along-the-row", "learner")) {
            CommandRun marked = CommandRun.of("mark", sample, "--out", folder + "/" + manner, "--manner", manner);
            CommandRun fit = CommandRun.of(
                    "fit", sample, "--instrument", "dg-21", "--transpose", "0", "--solve", "1", "--manner", manner);
            String cost = lines(fit).get(1).replaceAll(".* cost (\\d+).*", "$1");
            assertTrue(
                    marked.out().matches("(?s).*Down the Cellar Steps .* " + cost + " .*"), marked.out() + fit.out());
        }
    }

    @Test
    void tableOfTheBookCountsTunesAndKeys() throws IOException {
        scale();
        ScoreText.file(folder.resolve("in/flat.xml"), "F4 F4 F4 F4");
        CommandRun run = CommandRun.of(
                "fit", folder + "/in", "--instrument", "c-10,d-10", "--transpose", "-2..0", "--solve", "0");
        List<String> table =
                lines(run).subList(lines(run).size() - 3, lines(run).size());
        assertTrue(table.get(0).startsWith("instrument "), run.out());
        assertTrue(table.get(1).matches("c-10 +2/2 +1 +[12] +.*"), table.get(1));
        assertTrue(table.get(2).matches("d-10 +2/2 +1 +[01] +.*"), table.get(2));
    }

    @Test
    void valuesWithCommasHaveQuotationMarks() throws IOException {
        CommandRun run = CommandRun.of(
                "fit", scale(), "--instrument", "c-10", "--transpose", "0", "--format", "csv", "--solve", "0");
        String[] rows = run.out().split("\r\n");
        assertEquals("file,title,rank,instrument,semitones,key,verdict,cost,estimate,measure,reason", rows[0]);
        assertEquals(
                folder + "/in/scale.xml,scale,1,c-10,0,D,fails,,,1,"
                        + "\"No button of one-row C, 10 buttons, 2 spoons gives F#4.\"",
                rows[1]);
        assertEquals(2, rows.length);
    }

    @Test
    void textThatASpreadsheetWouldTakeForAFormulaIsMadeText() throws IOException {
        for (String title : List.of("=1+2", "+A1", "-x", "@SUM(A1)")) {
            String score = ScoreText.write(folder.resolve("in/formula.xml"), ScoreText.of(title, "D5 E5"));
            CommandRun run = CommandRun.of(
                    "fit", score, "--instrument", "d-10", "--transpose", "-1", "--best", "0", "--format", "csv");
            assertTrue(run.out().contains(",'" + title + ",1,d-10,-1,"), run.out());
        }
    }

    @Test
    void jsonHoldsTunesAndBook() throws IOException {
        CommandRun run =
                CommandRun.of("fit", scale(), "--instrument", "c-10,d-10", "--transpose", "0", "--format", "json");
        Object tree = JsonTree.read(run.out());
        Object tune = ((List<?>) JsonTree.get(tree, "tunes")).get(0);
        List<?> trials = (List<?>) JsonTree.get(tune, "trials");
        assertEquals("D", JsonTree.get(tune, "key"));
        assertEquals("d-10", JsonTree.get(trials.get(0), "instrument"));
        assertEquals("fits", JsonTree.get(trials.get(0), "verdict"));
        assertEquals("no-button", JsonTree.get(trials.get(1), "code"));
        List<?> book = (List<?>) JsonTree.get(tree, "book");
        assertEquals("d-10", JsonTree.get(book.get(0), "instrument"));
    }

    /** What is solved is the same in every format; so only one of them waits for it; all samples would only take longer. */
    @Test
    void anyNumberOfThreadsGivesTheSame() throws IOException {
        for (String format : List.of("text", "csv", "json")) {
            String[] one = {
                "fit",
                "samples/book/{dots,eel,frost,nine,out,reeds,two}-*.musicxml",
                "samples/refused",
                "--instrument",
                "dg-21,cf-19",
                "--transpose",
                "-2..2",
                "--format",
                format,
                "--solve",
                format.equals("text") ? "1" : "0",
                "--quiet",
                "--threads",
                "1"
            };
            String[] four = one.clone();
            four[four.length - 1] = "4";
            assertEquals(CommandRun.of(one), CommandRun.of(four));
        }
    }

    @Test
    void resultGoesIntoAFileButNeverOverAnInput() throws IOException {
        String scale = scale();
        CommandRun run =
                CommandRun.of("fit", scale, "--instrument", "d-10", "--transpose", "0", "--out", folder + "/fit.txt");
        assertEquals("", run.out());
        assertTrue(Files.readString(folder.resolve("fit.txt")).startsWith("scale, in D"));
        CommandRun over = CommandRun.of("fit", scale, "--out", scale);
        assertEquals(2, over.code());
        assertTrue(over.err().contains("would take the place of the input"), over.err());
        assertTrue(CommandRun.of("fit", scale, "--out", folder.toString()).err().contains("is a folder"));
    }

    @Test
    void badTuneStopsNoOther() throws IOException {
        scale();
        ScoreText.write(folder.resolve("in/broken.xml"), "<score-partwise><part>");
        CommandRun run = CommandRun.of("fit", folder + "/in", "--instrument", "d-10", "--transpose", "0");
        assertEquals(1, run.code());
        assertTrue(run.err().contains("broken.xml: line 1"), run.err());
        assertTrue(run.out().contains("scale, in D"), run.out());
    }

    @Test
    void scoreMayComeFromStandardInput() throws IOException {
        CommandRun run = CommandRun.piped(
                Files.readAllBytes(Path.of(scale())), "fit", "-", "--instrument", "d-10", "--transpose", "0");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("(standard input)"), run.out());
    }

    @Test
    void wrongWordsAreExplained() throws IOException {
        assertWrong("--transpose takes", "--transpose", "5..2");
        assertWrong("--transpose takes", "--transpose", "1,");
        assertWrong("--transpose takes", "--transpose", "25");
        assertWrong("--format takes text, csv or json, not xml.", "--format", "xml");
        assertWrong("--solve takes a whole number", "--solve", "-1");
        assertWrong("--best takes a whole number", "--best", "many");
        assertWrong("The library has no instrument dg-2", "--instrument", "dg-2");
        assertWrong("--instrument names dg-21 twice.", "--instrument", "dg-21,dg-21");
    }

    private void assertWrong(String message, String... words) throws IOException {
        CommandRun run = CommandRun.of("fit", scale(), words[0], words[1]);
        assertEquals(2, run.code(), message);
        assertTrue(run.err().contains(message), run.err());
        assertFalse(run.err().contains("The tool broke"), run.err());
    }
}
