package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.Annotation.Words;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MxlFileTest {

    private static final String SCORE = TinyScore.of("<note>\n  <rest/>\n</note>\n");
    private static final List<Annotation> MARKS = List.of(new Words(0, true, "push"));

    private static byte[] marked(byte[] mxl) throws DiagnosedException {
        return ScoreDocument.decode(mxl).withMarks(MARKS).encode();
    }

    private static byte[] stripped(byte[] mxl) throws DiagnosedException {
        return ScoreDocument.decode(mxl).withoutMarks().encode();
    }

    /** Checks that marking and stripping gives the file back, and returns the file with marks. */
    private static byte[] thereAndBack(byte[] mxl) throws DiagnosedException {
        assertArrayEquals(mxl, ScoreDocument.decode(mxl).encode());
        byte[] marked = marked(mxl);
        assertEquals(
                ScoreDocument.decode(mxl).withMarks(MARKS).text(),
                ScoreDocument.decode(marked).text());
        assertArrayEquals(mxl, stripped(marked));
        assertArrayEquals(marked, marked(marked));
        assertArrayEquals(marked, marked(stripped(marked)));
        return marked;
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 6, 9})
    void theVeryFileComesBackHoweverItWasPacked(int level) throws DiagnosedException {
        thereAndBack(new TinyMxl()
                .level(level)
                .container("score.xml")
                .deflated("score.xml", SCORE)
                .bytes());
    }

    @Test
    void allOtherEntriesStayInTheirOrder() throws DiagnosedException {
        byte[] marked = thereAndBack(new TinyMxl()
                .stored("mimetype", "application/vnd.recordare.musicxml")
                .deflated("tunes/score.xml", SCORE)
                .container("tunes/score.xml")
                .deflated("images/logo.svg", "<svg/>")
                .comment("set of 2026")
                .bytes());
        Map<String, String> entries = TinyMxl.read(marked);
        assertEquals(
                "[mimetype, tunes/score.xml, META-INF/container.xml, images/logo.svg, META-INF/bellowscribe-original]",
                entries.keySet().toString());
        assertEquals("<svg/>", entries.get("images/logo.svg"));
        assertEquals(SCORE, entries.get("META-INF/bellowscribe-original"));
        assertTrue(entries.get("tunes/score.xml").contains("bellowscribe-w1"));
        assertTrue(new String(marked, StandardCharsets.ISO_8859_1).endsWith("set of 2026"));
    }

    @Test
    void aStoredScoreStaysStored() throws DiagnosedException {
        byte[] marked = thereAndBack(new TinyMxl()
                .container("score.xml")
                .stored("score.xml", SCORE)
                .deflated("z", "z")
                .bytes());
        assertEquals(
                "[META-INF/container.xml, score.xml, z]",
                TinyMxl.read(marked).keySet().toString());
    }

    @Test
    void extraFieldsAndCommentsOfEntriesStay(@TempDir Path folder) throws Exception {
        ZipEntry entry = new ZipEntry("score.xml");
        entry.setComment("by ear");
        entry.setExtra(new byte[] {0x42, 0x42, 2, 0, 7, 7});
        byte[] marked = thereAndBack(new TinyMxl()
                .container("score.xml")
                .entry(entry, SCORE.getBytes(StandardCharsets.UTF_8))
                .bytes());
        Path file = Files.write(folder.resolve("a.mxl"), marked);
        try (ZipFile zip = new ZipFile(file.toFile())) {
            ZipEntry same = zip.getEntry("score.xml");
            assertEquals("by ear", same.getComment());
            assertArrayEquals(entry.getExtra(), same.getExtra());
            assertEquals(entry.getTime(), same.getTime());
            assertTrue(new String(zip.getInputStream(same).readAllBytes(), StandardCharsets.UTF_8).contains("push"));
        }
    }

    @Test
    void aScoreEditedAfterMarkingIsNotReplacedByTheKeptOne() throws DiagnosedException {
        ScoreDocument marked = ScoreDocument.decode(marked(TinyMxl.of(SCORE)));
        ScoreDocument edited = marked.withText(marked.text().replace("Melodeon", "Fiddle"));
        byte[] again = ScoreDocument.decode(edited.encode()).withMarks(MARKS).encode();
        byte[] bare = stripped(again);
        assertEquals(
                SCORE.replace("Melodeon", "Fiddle"), ScoreDocument.decode(bare).text());
        assertEquals(
                "[META-INF/container.xml, score.xml]",
                TinyMxl.read(bare).keySet().toString());
    }

    @Test
    void aDamagedKeptScoreIsOnlyDropped() throws DiagnosedException {
        byte[] marked = marked(TinyMxl.of(SCORE));
        ZipItem kept = MxlContainer.find(ZipDirectory.of(marked).items(), MxlFile.KEPT);
        marked[kept.data() + 5] ^= 0x55;
        assertEquals(SCORE, ScoreDocument.decode(stripped(marked)).text());
    }

    @Test
    void theNameOfTheFileDoesNotMatter() throws DiagnosedException {
        assertEquals(SCORE, ScoreDocument.decode(TinyMxl.of(SCORE)).text());
        assertEquals(SCORE, TinyScore.decode(SCORE).text());
    }

    @Test
    void theTableOfContentsIsObeyed() throws DiagnosedException {
        Map<String, String> pathsAndNames = new TreeMap<>(Map.of(
                "b.xml", "b.xml",
                "./b.xml", "b.xml",
                "in/b.xml", "in\\b.xml",
                "Tom &amp; Meg.musicxml", "Tom & Meg.musicxml",
                "&#x43;afé", "Café",
                ".xml", ".xml"));
        for (Map.Entry<String, String> names : pathsAndNames.entrySet()) {
            byte[] mxl = new TinyMxl()
                    .deflated("a.xml", "<score-timewise/>")
                    .container(names.getKey())
                    .deflated(names.getValue(), SCORE)
                    .bytes();
            assertEquals(SCORE, ScoreDocument.decode(mxl).text(), names::toString);
        }
    }

    @Test
    void aRootfileOfAnotherTypeIsPassedOver() throws DiagnosedException {
        byte[] mxl = new TinyMxl()
                .deflated(
                        "META-INF/container.xml",
                        "<container><rootfiles><rootfile full-path='a.pdf' media-type='application/pdf'/>"
                                + "<rootfile full-path='b.xml' media-type='application/vnd.recordare.musicxml+xml'/>"
                                + "</rootfiles></container>")
                .deflated("a.pdf", "%PDF")
                .deflated("b.xml", SCORE)
                .bytes();
        assertEquals(SCORE, ScoreDocument.decode(mxl).text());
    }

    @Test
    void aNameInAnOldCodePageIsFound() throws DiagnosedException {
        byte[] mxl =
                new TinyMxl().container("Café.xml").deflated("Caf?.xml", SCORE).bytes();
        // 0x82 is é in code page 437.
        byte[] old = new String(mxl, StandardCharsets.ISO_8859_1)
                .replace("Caf?.xml", "Caf\u0082.xml")
                .getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(SCORE, ScoreDocument.decode(old).text());
    }

    @Test
    void withoutATableOfContentsTheOnlyScoreIsTaken() throws DiagnosedException {
        byte[] mxl = new TinyMxl()
                .deflated("score.musicxml", SCORE)
                .deflated("logo.svg", "<svg/>")
                .bytes();
        assertEquals(SCORE, ScoreDocument.decode(mxl).text());
    }
}
