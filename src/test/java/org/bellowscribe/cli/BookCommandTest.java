package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code book new} and {@code book check}. */
class BookCommandTest {

    @TempDir
    Path folder;

    private CommandRun propose(String notes) throws IOException {
        ScoreText.file(folder.resolve("scores/one.musicxml"), notes);
        return CommandRun.of(
                "book", "new", folder + "/scores", "--out", folder + "/book.xml", "--instrument", "d-10,dg-21");
    }

    private String proposed() throws IOException {
        return Files.readString(folder.resolve("book.xml"));
    }

    @Test
    void aProposalNamesTheInstrumentThatPlaysTheTunes() throws IOException {
        assertEquals(0, propose("D4 F#4 C5 F#4").code());
        assertTrue(proposed().contains("<instrument id=\"dg-21\"/>"), proposed());
        assertTrue(proposed().contains("<tune file=\"one.musicxml\" title=\"one\" key=\"D\"/>"), proposed());
    }

    @Test
    void theBookIsCalledAsItsFolderIfTheScoresNameNone() throws IOException {
        propose("D4 F#4 A4 F#4");
        assertTrue(proposed().contains("<book title=\"scores\" folder=\"scores\""), proposed());
    }

    @Test
    void aTuneThatDoesNotLieOnTheBoxIsMoved() throws IOException {
        // F is missing on a D/G box; a tone higher, from D to E by its signature, all notes are there.
        propose("F4 G4 A4 F4 C5 A4 F4 F4");
        assertTrue(proposed().contains("key=\"E\""), proposed());
    }

    @Test
    void aProposalCanBeUsedAsItIs() throws IOException {
        propose("D4 F#4 A4 F#4");
        CommandRun check = CommandRun.of("book", "check", folder + "/book.xml");
        assertEquals(0, check.code(), check.err());
        assertTrue(
                check.out().endsWith("scores can be used; 1 tunes.\n  dg-21: D/G, 21 buttons, low notes, 1 tunes\n"),
                check.out());
    }

    @Test
    void aProposalNeverTakesThePlaceOfAFile() throws IOException {
        propose("D4 F#4 A4 F#4");
        CommandRun again = propose("D4 F#4 A4 F#4");
        assertEquals(2, again.code());
        assertTrue(again.err().contains("is there already"), again.err());
    }

    @Test
    void checkTellsWhatIsWrong() throws IOException {
        String file = ScoreText.write(folder.resolve("book.xml"), "<book/>");
        CommandRun run = CommandRun.of("book", "check", file);
        assertEquals(1, run.code());
        assertTrue(
                run.err().contains("line 1, column 8: error [bad-definition] Attribute 'title' must appear"),
                run.err());
    }

    @Test
    void checkTellsAKeyOfAnotherModeThanTheTune() throws IOException {
        ScoreText.file(folder.resolve("one.musicxml"), "D4 F#4 A4 F#4 D4 F#4 A4 D4");
        ScoreText.file(folder.resolve("two.musicxml"), "D4 F#4 A4 F#4 D4 F#4 A4 D4");
        String file = ScoreText.write(folder.resolve("book.xml"), """
                <book title="T">
                  <instrument id="dg-21"/>
                  <instrument id="d-10"/>
                  <tune file="one.musicxml" key="D minor"/>
                  <tune file="two.musicxml" key="G major">
                    <on instrument="d-10" key="E minor"/>
                  </tune>
                </book>
                """);
        CommandRun run = CommandRun.of("book", "check", file);
        assertEquals(1, run.code());
        assertEquals("""
                book.xml: line 4, column 44: error [bad-definition] one.musicxml: The tune is in D: moved to any key it stays major, so it is never in D minor.
                  Maybe D major.
                book.xml: line 6, column 42: error [bad-definition] two.musicxml: The tune is in D: moved to any key it stays major, so it is never in E minor.
                  Maybe E major.
                """, run.err().replace(file, "book.xml"));
    }

    @Test
    void theDemoBookFileCanBeUsed() {
        assertEquals(
                0, CommandRun.of("book", "check", "samples/learner-edition.xml").code());
    }

    @Test
    void aWordThatBookDoesNotKnowIsAnsweredWithTheNearest() {
        CommandRun run = CommandRun.of("book", "chek", "a.xml");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("Maybe check is meant."), run.err());
    }
}
