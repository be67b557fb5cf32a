package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code mark --report}: which files there are, what they hold without a script, what is never written over. */
class ReportOptionTest {

    private static final String GATE =
            Path.of("samples", "book", "the-leaning-gate.musicxml").toString();
    private static final String REFUSED = Path.of("samples", "refused", "the-stile-that-is-not-there.musicxml")
            .toString();

    @TempDir
    private static Path folder;

    private static CommandRun run;
    private static String page;

    @BeforeAll
    static void report() throws IOException {
        run = CommandRun.of(
                "mark", GATE, REFUSED, "--report", folder.resolve("one").toString());
        page = Files.readString(folder.resolve("one/tunes/book/the-leaning-gate.html"));
    }

    private static List<String> files(Path below) throws IOException {
        try (Stream<Path> files = Files.walk(below)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> below.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void anIndexAPageForEachTuneAndWhatTheyShare() throws IOException {
        assertEquals(
                List.of(
                        "index.html",
                        "shared/page.css",
                        "shared/page.js",
                        "shared/verovio-licence-gpl.txt",
                        "shared/verovio-licence.txt",
                        "shared/verovio-toolkit-wasm.js",
                        "tunes/book/the-leaning-gate.html",
                        "tunes/book/the-leaning-gate.js"),
                files(folder.resolve("one")));
        assertTrue(run.out().contains("Open the report in a browser: "), run.out());
    }

    @Test
    void theIndexLinksTunesAndSaysWhyOthersHaveNoPage() throws IOException {
        String index = Files.readString(folder.resolve("one/index.html"));
        assertTrue(index.contains("<a href=\"tunes/book/the-leaning-gate.html\">The Leaning Gate</a>"), index);
        assertTrue(index.contains("<b dir=\"auto\">The Stile That Is Not There</b>: "), index);
    }

    @Test
    void withoutAScriptThereAreDrawingWordsAndRemarks() {
        assertTrue(page.contains("aria-label=\"Measures 1-8, 2nd time: from "));
        assertTrue(page.contains("<a href=\"#s2\">1:3</a>"));
        assertTrue(page.contains("<h2 id=\"h-remarks\">Remarks</h2>"));
        assertEquals(40, page.split("<tr id=\"s", -1).length - 1);
    }

    /** The longest tune of the demo book has 130 notes and two sections that are played twice. */
    @Test
    void aPageIsSixtyKilobytesAtMost() throws IOException {
        String hornpipe =
                Path.of("samples", "book", "the-ferrymans-hornpipe.musicxml").toString();
        CommandRun.of("mark", hornpipe, "--report", folder.resolve("long").toString());
        Path tunes = folder.resolve("long/tunes");
        long bytes = Files.size(tunes.resolve("the-ferrymans-hornpipe.html"))
                + Files.size(tunes.resolve("the-ferrymans-hornpipe.js"));
        assertTrue(bytes <= 60_000, bytes + " bytes");
    }

    @Test
    void theSameRunWritesTheSameBytes() throws IOException {
        CommandRun.of("mark", GATE, "--report", folder.resolve("two").toString(), "--threads", "1");
        assertEquals(
                page.replace("../../", "../"), Files.readString(folder.resolve("two/tunes/the-leaning-gate.html")));
        assertEquals(
                Files.readString(folder.resolve("one/tunes/book/the-leaning-gate.js")),
                Files.readString(folder.resolve("two/tunes/the-leaning-gate.js")));
    }

    @Test
    void anIndexThatIsNotOursStays() throws IOException {
        Path site = Files.createDirectories(folder.resolve("site"));
        Files.writeString(site.resolve("index.html"), "<h1>My own</h1>");
        CommandRun refused = CommandRun.of("mark", GATE, "--report", site.toString());
        assertEquals(1, refused.code());
        assertTrue(refused.err().contains("which is not ours"), refused.err());
        assertEquals(List.of("index.html"), files(site));
    }

    @Test
    void reasonsWithoutAReportAreRefused() {
        CommandRun refused = CommandRun.of(
                "mark",
                GATE,
                "--report-reasons",
                "3",
                "--out",
                folder.resolve("x").toString());
        assertEquals(2, refused.code());
        assertTrue(refused.err().contains("Maybe add --report and a folder."), refused.err());
    }

    @Test
    void aReportAloneNeedsNoFolderForScores() throws IOException {
        assertFalse(files(folder.resolve("one")).stream().anyMatch(name -> name.endsWith(".musicxml")));
        assertEquals(1, run.code());
        assertFalse(run.out().contains("notation program"), run.out());
    }
}
