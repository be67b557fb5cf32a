package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is told of book files that are wrong; nothing is written. */
class BookRefusalTest {

    @TempDir
    Path folder;

    private String told(String xml) throws IOException {
        ScoreText.file(folder.resolve("one.musicxml"), "D4 F#4 A4 F#4");
        String file = ScoreText.write(folder.resolve("book.xml"), xml);
        CommandRun run = CommandRun.of("mark", file, "--out", folder + "/out");
        assertEquals(1, run.code(), run.err());
        assertFalse(Files.exists(folder.resolve("out")));
        return run.err().replace(file, "book.xml");
    }

    @Test
    void anUnknownInstrumentIsAnsweredWithTheNearest() throws IOException {
        assertEquals("""
                book.xml: line 1, column 41: error [unknown-name] The library has no instrument dg-22.
                  Maybe dg-21 or dg-23.
                  The command instruments list shows all.
                """, told("<book title=\"T\"><instrument id=\"dg-22\"/></book>"));
    }

    @Test
    void aScoreThatIsNotThereIsAnsweredWithTheNearest() throws IOException {
        assertEquals("""
                book.xml: line 1, column 43: error [bad-definition] There is no score on.musicxml in the folder of the scores.
                  Maybe one.musicxml.
                """, told("<book title=\"T\"><tune file=\"on.musicxml\"/></book>"));
    }

    @Test
    void aValueIsRefusedInTheWordsOfTheOption() throws IOException {
        assertEquals(
                "book.xml: line 1, column 33: error [bad-definition] transpose takes auto or a whole number from -24 to"
                        + " 24, not 99.\n",
                told("<book title=\"T\" transpose=\"99\"/>"));
    }

    @Test
    void allThatIsWrongIsToldAtOnce() throws IOException {
        String told = told("<book title=\"T\" manner=\"learnr\"><tune file=\"on.musicxml\"/><tune file=\"one.musicxml\""
                + " key=\"H\"/></book>");
        assertTrue(told.contains("The library has no manner learnr."), told);
        assertTrue(told.contains("There is no score on.musicxml"), told);
        assertTrue(told.contains("key takes a tonic such as G or Bb"), told);
    }

    @Test
    void wishesThatDoNotGoTogetherAreRefused() throws IOException {
        assertEquals("""
                book.xml: line 1, column 35: error [bad-definition] keep-notes goes with transpose or key.
                  Maybe add transpose auto.
                """, told("<book title=\"T\" keep-notes=\"yes\"/>"));
    }

    @Test
    void pinsThatAreNotThereAreRefused() throws IOException {
        String told = told("<book title=\"T\"><tune file=\"one.musicxml\" pins=\"two.pins.xml\"/></book>");
        assertTrue(told.contains("There is no file two.pins.xml with pins."), told);
    }

    @Test
    void aFolderWithoutScoresIsRefused() throws IOException {
        assertTrue(told("<book title=\"T\" folder=\"nowhere\"/>").contains("There is no folder nowhere"));
    }

    @Test
    void anOptionHasNoSayAboutABookFile() throws IOException {
        String file = ScoreText.write(folder.resolve("book.xml"), "<book title=\"T\"/>");
        CommandRun run = CommandRun.of("mark", file, "--out", folder + "/out", "--manner", "learner");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("--manner has no say about a book file."), run.err());
    }

    @Test
    void aBookFileStandsAlone() throws IOException {
        String file = ScoreText.write(folder.resolve("book.xml"), "<book title=\"T\"/>");
        CommandRun run = CommandRun.of("mark", file, "samples/book", "--out", folder + "/out");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("A book file stands alone"), run.err());
    }

    @Test
    void anEditionWithoutTunesIsNotWritten() throws IOException {
        String told = told("<book title=\"T\"><instrument id=\"d-10\"/><tune file=\"one.musicxml\" key=\"C\"/></book>");
        assertTrue(told.contains("error [no-button]"), told);
    }
}
