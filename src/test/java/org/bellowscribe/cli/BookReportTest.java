package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A report of a book: pages for each instrument, one index. */
class BookReportTest {

    @TempDir
    private static Path folder;

    private static CommandRun run;

    @BeforeAll
    static void make() throws IOException {
        ScoreText.file(folder.resolve("scores/scale.musicxml"), "D4 E4 F#4 G4 A4 B4 C#5 D5");
        ScoreText.file(folder.resolve("scores/flat.musicxml"), "D4 F4 D4 F4");
        Files.writeString(folder.resolve("book.xml"), """
                <book title="Two &lt;boxes&gt;" folder="scores" order="by-learning">
                  <instrument id="dg-21"/>
                  <instrument id="d-10" folder="one-row"/>
                </book>""");
        run = CommandRun.of(
                "mark",
                folder.resolve("book.xml").toString(),
                "--out",
                folder.resolve("out").toString(),
                "--report",
                folder.resolve("pages").toString());
    }

    private static String read(String file) throws IOException {
        return Files.readString(folder.resolve("pages").resolve(file));
    }

    @Test
    void oneIndexHoldsTheInstrumentsApart() throws IOException {
        assertEquals(1, run.code(), run.err());
        String index = read("index.html");
        assertTrue(index.contains("<h1 dir=\"auto\">Two &lt;boxes&gt;</h1>"), index);
        assertEquals(1, index.split("<h2>D/G, 21 buttons", -1).length - 1, index);
        assertEquals(1, index.split("<h2>one-row D, 10 buttons", -1).length - 1, index);
        int first = index.indexOf("href=\"tunes/dg-21/scale.html\"");
        int second = index.indexOf("href=\"tunes/one-row/scale.html\"");
        int between = index.indexOf("<h2>one-row D, 10 buttons");
        assertTrue(0 < first && first < between && between < second, index);
        assertTrue(index.contains("<h2>Not marked: D/G, 21 buttons"), index);
    }

    @Test
    void eachInstrumentHasItsOwnPages() throws IOException {
        assertTrue(read("tunes/dg-21/scale.html").contains("of 21 melody buttons are used"));
        assertTrue(read("tunes/one-row/scale.html").contains("of 10 melody buttons are used"));
        assertTrue(read("tunes/one-row/scale.html").contains("src=\"../../shared/page.js\""));
    }

    @Test
    void aPageTellsWhatIsNew() throws IOException {
        String page = read("tunes/one-row/scale.html");
        assertTrue(page.contains("<h2 id=\"h-new\">New in this tune</h2>\n<ul><li>"), page);
    }

    @Test
    void theEditionsAreThereToo() {
        assertTrue(Files.exists(folder.resolve("out/one-row/scale.musicxml")));
        assertTrue(run.out().contains("Open the report in a browser: "), run.out());
    }
}
