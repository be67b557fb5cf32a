package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.Annotation.Words;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EncodingTest {

    private static final String BOM = "\uFEFF";

    private static String score(String declaration, String name) {
        return declaration + "<score-partwise><part-list><score-part id='P1'><part-name>" + name
                + "</part-name></score-part></part-list><part id='P1'><measure number='1'>\n<note>\n<rest/></note>"
                + "</measure></part></score-partwise>";
    }

    private static String declared(String encoding) {
        return "<?xml version='1.0' encoding='" + encoding + "'?>\n";
    }

    private static String refusal(byte[] bytes) {
        return assertThrows(DiagnosedException.class, () -> ScoreDocument.decode(bytes))
                .diagnostics()
                .get(0)
                .print("f");
    }

    @ParameterizedTest
    @CsvSource({
        "UTF-8, false, UTF-8",
        "UTF-8, true, UTF-8",
        "UTF-8, true, ISO-8859-1",
        "UTF-8, false, UTF-16",
        "UTF-16LE, true, UTF-16",
        "UTF-16BE, true, UTF-16",
        "UTF-16LE, false, UTF-16LE",
        "UTF-16BE, false, UTF-16BE",
        "UTF-32LE, true, UTF-32",
        "UTF-32BE, false, UTF-32BE",
        "ISO-8859-1, false, ISO-8859-1",
        "windows-1252, false, windows-1252",
        "ISO-8859-15, false, iso-8859-15",
        "Shift_JIS, false, Shift_JIS"
    })
    void theEncodingIsFoundAndKept(String charset, boolean mark, String declared) throws DiagnosedException {
        String name = charset.equals("Shift_JIS") ? "\u8f2a" : "Akkordé";
        String text = score(declared(declared), name);
        byte[] bytes = ((mark ? BOM : "") + text).getBytes(Charset.forName(charset));
        ScoreDocument score = ScoreDocument.decode(bytes);
        assertEquals(text, score.text());
        assertArrayEquals(bytes, score.encode());

        List<Annotation> marks = List.of(new Words(0, true, "pull ′ \ud834\udd1e"));
        byte[] marked = score.withMarks(marks).encode();
        ScoreDocument again = ScoreDocument.decode(marked);
        assertArrayEquals(bytes, again.withoutMarks().encode());
        assertArrayEquals(marked, again.withMarks(marks).encode());
        assertEquals("pull ′ \ud834\udd1e", XmlText.unescape(again.text().replaceAll("(?s).*<words>|</words>.*", "")));
    }

    @Test
    void withoutDeclarationItIsUtf8() throws DiagnosedException {
        byte[] bytes = score("", "Akkordé").getBytes(StandardCharsets.UTF_8);
        assertTrue(ScoreDocument.decode(bytes).text().contains("Akkordé"));
    }

    @Test
    void charactersOutsideTheEncodingBecomeReferences() throws DiagnosedException {
        ScoreDocument score =
                ScoreDocument.decode(score(declared("ISO-8859-1"), "Akkordé").getBytes(StandardCharsets.ISO_8859_1));
        String bytes = new String(
                score.withMarks(List.of(new Words(0, true, "é ′ \ud834\udd1e"))).encode(), StandardCharsets.ISO_8859_1);
        assertTrue(bytes.contains("<words>é &#x2032; &#x1d11e;</words>"), bytes);
    }

    @ParameterizedTest
    @CsvSource({"LF, '\n'", "CRLF, '\r\n'", "CR, '\r'"})
    void lineEndsAreKeptAndCopied(String name, String lineEnd) throws DiagnosedException {
        String text = score(declared("UTF-8"), "a").replace("\n", lineEnd);
        ScoreDocument marked = TinyScore.decode(text).withMarks(List.of(new Words(0, true, "air")));
        assertTrue(marked.text().contains(">" + lineEnd + "<direction placement"), name);
        assertEquals(text, marked.withoutMarks().text());
    }

    @Test
    void aBadByteIsRefusedWithItsLine() {
        byte[] bytes = score(declared("UTF-8"), "Akkordé").getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(
                "f: line 2, column 65: error [not-xml] The byte E9 cannot be read here as UTF-8.\n"
                        + "  Maybe export the score again from the program that wrote it.",
                refusal(bytes));
    }

    @Test
    void halfACharacterAtTheEndIsRefused() {
        byte[] bytes = (score("", "a") + " ").getBytes(StandardCharsets.UTF_8);
        bytes[bytes.length - 1] = (byte) 0xC3;
        assertTrue(refusal(bytes).contains("The byte C3 cannot be read here as UTF-8."), refusal(bytes));
    }

    @Test
    void anUnknownEncodingIsRefused() {
        assertEquals(
                "f: line 1, column 1: error [not-xml] The file says that it is written in 'klingon-8', an encoding not"
                        + " known here.\n  Maybe save the score as UTF-8.",
                refusal(score(declared("klingon-8"), "a").getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void anEncodingThatCannotBeWrittenBackIsRefused() {
        // ISO-2022-JP may switch to ASCII again and again; the encoder would do so only once.
        byte[] bytes = score(declared("ISO-2022-JP"), "\u001b(B\u001b(B").getBytes(StandardCharsets.US_ASCII);
        assertTrue(refusal(bytes).contains("cannot be written back byte by byte"), refusal(bytes));
    }
}
