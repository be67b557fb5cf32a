package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A small book for two instruments, from its file to its editions. */
class BookEditionTest {

    private static final String BOOK = """
            <book title="=Small &amp; invented" order="by-learning" manner="learner" marks="direction,air,buttons,left-hand">
              <text heading="Hello">Play slowly.</text>
              <instrument id="dg-21"/>
              <instrument id="d-10" folder="one-row"/>
              <tune file="hard.musicxml" title="=Hard"/>
              <tune file="high.musicxml"/>
              <tune file="easy.musicxml" tempo="80"><note>Count to four.</note></tune>
            </book>
            """;

    @TempDir
    static Path folder;

    private static CommandRun run;

    @BeforeAll
    static void markTheBook() throws IOException {
        ScoreText.file(folder.resolve("hard.musicxml"), "D4 E4 F#4 G4 A4 B4 C#5 D5");
        ScoreText.file(folder.resolve("easy.musicxml"), "D4 F#4 A4 F#4 D4 F#4 A4 D4");
        // C is not on a one-row D.
        ScoreText.file(folder.resolve("high.musicxml"), "D4 F#4 C5 F#4 A4 B4 G4 E4 D5 C#5 C5 D4");
        ScoreText.write(folder.resolve("book.xml"), BOOK);
        run = CommandRun.of("mark", folder + "/book.xml", "--out", folder + "/out", "--threads", "2");
    }

    private static String written(String file) throws IOException {
        return Files.readString(folder.resolve("out").resolve(file));
    }

    private static List<String> files(String edition) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("out").resolve(edition))) {
            return List.copyOf(
                    files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new)));
        }
    }

    @Test
    void everyInstrumentHasAFolderWithSheetsIndexAndFrontPage() throws IOException {
        assertEquals(
                List.of(
                        "buttons.svg",
                        "easy.musicxml",
                        "front-page.html",
                        "front-page.txt",
                        "hard.musicxml",
                        "high.musicxml",
                        "index.csv",
                        "index.html",
                        "index.txt"),
                files("dg-21"));
    }

    @Test
    void aTuneMayHaveItsSound() throws IOException {
        Path book = folder.resolve("sound/book.xml");
        ScoreText.file(book.resolveSibling("loud.musicxml"), "D4 F#4 A4 F#4");
        ScoreText.file(book.resolveSibling("still.musicxml"), "D4 F#4 A4 F#4");
        ScoreText.write(
                book,
                "<book title=\"A\" folder=\".\"><tune file=\"loud.musicxml\" midi=\"yes\"/>"
                        + "<tune file=\"still.musicxml\"/></book>");
        CommandRun sound = CommandRun.of("mark", book.toString(), "--out", folder + "/sounding");
        assertEquals(0, sound.code(), sound.err());
        assertTrue(Files.exists(folder.resolve("sounding/dg-21/loud.mid")));
        assertFalse(Files.exists(folder.resolve("sounding/dg-21/still.mid")));
    }

    @Test
    void aTuneThatCannotBePlayedIsMissedInOneEditionOnly() throws IOException {
        assertEquals(1, run.code());
        assertFalse(files("one-row").contains("high.musicxml"));
        assertTrue(written("one-row/index.txt").contains("Not in this edition"), written("one-row/index.txt"));
    }

    @Test
    void theEasyTuneComesFirst() throws IOException {
        String index = written("dg-21/index.txt");
        assertTrue(index.contains("\n1. easy "), index);
        assertTrue(index.contains("the least that can be"), index);
    }

    @Test
    void aSheetHasItsNoteItsTempoAndWhatIsNew() throws IOException {
        String sheet = written("dg-21/easy.musicxml");
        assertTrue(sheet.contains("<words>Count to four.</words>"), sheet);
        assertTrue(sheet.contains("<words>Marked for quarter = 80.</words>"), sheet);
        assertTrue(sheet.contains("<words>New: "), sheet);
    }

    @Test
    void whatIsNewIsNotNewAgain() throws IOException {
        String sheet = written("dg-21/hard.musicxml");
        assertTrue(sheet.contains("<words>New: "), sheet);
        assertFalse(sheet.contains("time 4/4"), sheet);
    }

    @Test
    void theCommasOfTheIndexHoldNoFormula() throws IOException {
        assertTrue(written("dg-21/index.csv").contains("'=Hard"), written("dg-21/index.csv"));
    }

    @Test
    void titlesCannotBeMarkup() throws IOException {
        assertTrue(written("dg-21/front-page.html").contains("<h1>=Small &amp; invented</h1>"));
    }

    @Test
    void theFrontPageExplainsOnlyMarksThatOccur() throws IOException {
        String front = written("dg-21/front-page.txt");
        assertTrue(front.contains("Play slowly."), front);
        assertTrue(front.contains("close the bellows from this note on"), front);
        assertFalse(front.contains("index, middle, ring"), "no fingers are printed");
    }

    @Test
    void theDrawingHasOnlyTheNotesOfTheBook() throws IOException {
        assertTrue(written("one-row/buttons.svg").contains(">D4<"), written("one-row/buttons.svg"));
        assertFalse(written("one-row/buttons.svg").contains(">D6<"), written("one-row/buttons.svg"));
    }

    @Test
    void theFrontPageCautions() throws IOException {
        assertTrue(written("dg-21/front-page.txt").contains("Never force the bellows"));
        assertTrue(written("dg-21/front-page.txt").contains("health"));
    }

    @Test
    void strippedSheetsAreTheScores() throws IOException {
        CommandRun.of("strip", folder + "/out/dg-21/easy.musicxml", "--out", folder + "/stripped");
        assertArrayEquals(
                Files.readAllBytes(folder.resolve("easy.musicxml")),
                Files.readAllBytes(folder.resolve("stripped/easy.musicxml")));
    }

    @Test
    void anotherNumberOfThreadsChangesNothing() throws IOException {
        CommandRun.of("mark", folder + "/book.xml", "--out", folder + "/again", "--threads", "1");
        for (String file : files("dg-21")) {
            assertArrayEquals(
                    Files.readAllBytes(folder.resolve("out/dg-21").resolve(file)),
                    Files.readAllBytes(folder.resolve("again/dg-21").resolve(file)),
                    file);
        }
    }

    @Test
    void aQuietRunPrintsNoLinesAboutTunes() {
        CommandRun quiet = CommandRun.of("mark", folder + "/book.xml", "--out", folder + "/quiet", "--quiet");
        assertEquals("", quiet.out());
        assertTrue(quiet.err().contains("no-button"), quiet.err());
    }
}
