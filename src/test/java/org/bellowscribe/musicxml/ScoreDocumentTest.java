package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;

class ScoreDocumentTest {

    private static String refusal(String text) {
        return assertThrows(DiagnosedException.class, () -> TinyScore.decode(text))
                .diagnostics()
                .get(0)
                .print("f");
    }

    @Test
    void onlyNotesOfMeasuresAreCounted() throws DiagnosedException {
        String measure = "<note/><!-- <note/> --><![CDATA[<note/>]]><foo><note/></foo><note><note/></note>";
        ScoreDocument score =
                TinyScore.decode("<!DOCTYPE a [<!ENTITY n '<note/>'>]><score-partwise><note/><part><note/><measure>"
                        + measure + "</measure></part></score-partwise>");
        assertEquals(2, score.noteCount());
        assertEquals("score-partwise", score.rootName());
    }

    @Test
    void anotherTextKeepsTheEncoding() throws DiagnosedException {
        byte[] bytes = ("\uFEFF" + TinyScore.of("")).getBytes(StandardCharsets.UTF_16LE);
        ScoreDocument score = ScoreDocument.decode(bytes);
        String text = TinyScore.of("<note/>");
        assertSame(score, score.withText(score.text()));
        assertArrayEquals(
                ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE),
                score.withText(text).encode());
        assertThrows(IllegalArgumentException.class, () -> score.withText("<score-partwise>"));
    }

    @Test
    void theBytesGivenAndTakenAreCopies() throws DiagnosedException {
        byte[] bytes = TinyScore.of("").getBytes(StandardCharsets.UTF_8);
        ScoreDocument score = ScoreDocument.decode(bytes);
        bytes[0] = 'x';
        score.encode()[1] = 'x';
        assertEquals(TinyScore.of(""), new String(score.encode(), StandardCharsets.UTF_8));
    }

    @Test
    void whatIsNoScoreIsRefused() {
        assertEquals("f: error [empty-file] The file is empty.", refusal(""));
        assertEquals(
                "f: line 1, column 1: error [not-xml] The file is no XML: it begins with \"The tune\", not with <.\n"
                        + "  Maybe export the score again from the program that wrote it.",
                refusal("The tune\n"));
        assertEquals(
                "f: error [not-musicxml] The outermost element is <page>, but a score begins with <score-partwise>.\n"
                        + "  Maybe export the score as MusicXML from the program that wrote it.",
                refusal("<page></page>"));
        assertEquals(
                "f: error [not-musicxml] The file is an opus, a list of scores.\n"
                        + "  Maybe give the scores that it lists.",
                refusal("<opus/>"));
        assertEquals(
                "f: error [not-musicxml] The file is the table of contents of a compressed score.\n"
                        + "  Maybe give the whole .mxl file.",
                refusal("<container/>"));
        assertEquals(
                "f: line 2, column 1: error [not-xml] A second outermost element begins here.\n"
                        + "  Maybe export the score again from the program that wrote it.",
                refusal("<score-partwise/>\n<score-partwise/>"));
    }

    @Test
    void aFileTooLargeOrTooDeepIsRefused() {
        byte[] large = new byte[ScoreDocument.MAX_BYTES + 1];
        DiagnosedException refusal = assertThrows(DiagnosedException.class, () -> ScoreDocument.decode(large));
        assertEquals(
                "f: error [unreadable] The file has 67108865 bytes, and a score may have 67108864.",
                refusal.diagnostics().get(0).print("f"));
        assertEquals(
                "f: line 1, column 3002: error [not-musicxml] Elements stand inside each other more than 1000 deep.",
                refusal("<aa>" + "<b>".repeat(100_000)));
    }

    @Test
    void notesInEntitiesAreRefused() throws DiagnosedException {
        String harmless =
                TinyScore.of("<note/>&n;").replace("partwise.dtd\">", "partwise.dtd\" [<!ENTITY n '<!---->'>]>");
        assertEquals(1, TinyScore.decode(harmless).noteCount());
        assertEquals(
                "f: error [not-musicxml] Some notes of the score stand in entities of its DOCTYPE and cannot be marked.\n"
                        + "  Maybe open the score in a notation program and export it again.",
                refusal(harmless.replace("<!---->", "<note/>")));
    }

    @Test
    void anEntityBombIsRefused() {
        String entities =
                "<!ENTITY a 'hahahaha'><!ENTITY b '" + "&a;".repeat(50) + "'><!ENTITY c '" + "&b;".repeat(50) + "'>";
        String bomb = TinyScore.of("&c;").replace("partwise.dtd\">", "partwise.dtd\" [" + entities + "]>");
        assertTrue(refusal(bomb).contains("error [not-xml] The file is not well-formed XML: "), refusal(bomb));
    }
}
