package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompareCommandTest {

    private static final String TUNE = "D4 E4 F#4 G4 A4 B4 C#5 D5";

    @TempDir
    private Path folder;

    private String one;

    @BeforeEach
    void write() throws IOException {
        one = ScoreText.file(folder.resolve("in").resolve("one.musicxml"), TUNE);
        ScoreText.file(folder.resolve("in").resolve("two.musicxml"), "G4 B4 D5 B4 G4 B4 D5 G5");
    }

    private String in() {
        return folder.resolve("in").toString();
    }

    private String out(String name) {
        return folder.resolve(name).toString();
    }

    private String read(String out, String name) throws IOException {
        return Files.readString(folder.resolve(out).resolve(name));
    }

    private List<String> written(String name) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(name))) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void pageStandsBesideBothSheets() throws IOException {
        CommandRun run =
                CommandRun.of("compare", one, "--between", "along-the-row,across-the-rows", "--out", out("out"));
        assertEquals(0, run.code(), run.err());
        assertEquals(
                List.of("compare-scores.js", "compare.html", "one.A.musicxml", "one.B.musicxml", "shared"),
                written("out"));
        String page = read("out", "compare.html");
        assertTrue(page.contains("href=\"one.B.musicxml\""));
    }

    @Test
    void sheetsAreThoseThatMarkWrites() throws IOException {
        CommandRun.of("compare", one, "--between", "learner,across-the-rows", "--out", out("out"));
        CommandRun.of("mark", one, "--manner", "across-the-rows", "--out", out("marked"));
        assertEquals(read("marked", "one.musicxml"), read("out", "one.B.musicxml"));
    }

    @Test
    void blindPageIsTheSameForASeedAndOnlyItsKeyTells() throws IOException {
        for (String[] run : List.of(new String[] {"a", "1"}, new String[] {"b", "2"})) {
            CommandRun.of(
                    "compare",
                    in(),
                    "--between",
                    "along-the-row,across-the-rows",
                    "--blind",
                    "5",
                    "--out",
                    out(run[0]),
                    "--threads",
                    run[1]);
        }
        assertEquals(written("a"), written("b"));
        for (String name :
                written("a").stream().filter(each -> !each.equals("shared")).toList()) {
            assertArrayEquals(
                    Files.readAllBytes(folder.resolve("a").resolve(name)),
                    Files.readAllBytes(folder.resolve("b").resolve(name)));
            assertEquals(name.equals("key.csv"), read("a", name).contains("along-the-row"), name);
        }
    }

    @Test
    void someSeedTurnsTheWaysRound() throws IOException {
        boolean straight = false;
        boolean turned = false;
        for (int seed = 0; seed < 8; seed++) {
            CommandRun.of(
                    "compare",
                    one,
                    "--between",
                    "along-the-row,learner",
                    "--blind",
                    "" + seed,
                    "--out",
                    out("out" + seed));
            String key = read("out" + seed, "key.csv");
            straight |= key.contains("along-the-row,learner");
            turned |= key.contains("learner,along-the-row");
        }
        assertTrue(straight && turned);
    }

    @Test
    void marksByHandAreOneOfTheWays() throws IOException {
        CommandRun.of("mark", one, "--out", out("marked"));
        String score = read("marked", "one.musicxml");
        String changed = score.replaceFirst("<text>3</text>", "<text>2′</text>");
        assertFalse(changed.equals(score), score);
        Path edited = folder.resolve("edited.musicxml");
        Files.writeString(edited, changed);
        CommandRun run =
                CommandRun.of("compare", edited.toString(), "--between", "along-the-row,by-hand", "--out", out("out"));
        assertEquals(0, run.code(), run.err());
        String page = read("out", "compare.html");
        assertTrue(page.contains("B: by-hand"), page);
        assertTrue(page.contains("<mark>2.2</mark>"), page);
    }

    @Test
    void tuneThatCannotBePlayedDoesNotStopTheOthers() throws IOException {
        ScoreText.file(folder.resolve("in").resolve("flat.xml"), "D4 F4 D4 F4");
        CommandRun run = CommandRun.of("compare", in(), "--between", "along-the-row,learner", "--out", out("out"));
        assertEquals(1, run.code());
        assertTrue(run.out().contains("not compared because no button gives a note [no-button]: 1"), run.out());
        assertTrue(run.out().contains("2 tunes compared."), run.out());
        assertFalse(written("out").contains("flat.A.xml"));
    }

    @Test
    void tuneWithoutAnotherWaySaysSo() throws IOException {
        String note = ScoreText.file(folder.resolve("note.xml"), "D4*4");
        CommandRun run = CommandRun.of("compare", note, "--between", "along-the-row,other-way", "--out", out("out"));
        assertEquals(1, run.code());
        assertTrue(run.err().contains("error [no-other-way]"), run.err());
        assertTrue(run.err().contains("There is nothing to compare."), run.err());
        assertFalse(Files.exists(folder.resolve("out").resolve("compare.html")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            --out x                                                | Which two ways are to be compared?
            --between along-the-row,learner                        | Where should the page go?
            --between along-the-row --out x                        | two ways with a comma between
            --between a,b,c --out x                                | two ways with a comma between
            --between learner,learner --out x                      | names one way twice
            --between learner,nobody --out x                       | nobody
            --between along-the-row,learner --out x --blind -1     | --blind
            --between along-the-row,learner --out x --blind many   | --blind
            --between along-the-row,learner --out x --in-place     | in-place
            """)
    void wrongUseIsTold(String words, String answer) {
        String[] line = ("compare " + one + " " + words).split(" ");
        CommandRun run = CommandRun.of(line);
        assertEquals(2, run.code(), run.err());
        assertTrue(run.err().contains(answer), run.err());
    }

    @Test
    void pipeIsRefused() {
        CommandRun run = CommandRun.of("compare", "-", "--between", "along-the-row,learner", "--out", out("out"));
        assertEquals(2, run.code());
        assertTrue(run.err().startsWith("compare needs files"), run.err());
    }
}
