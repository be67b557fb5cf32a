package org.bellowscribe.diagnostic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text of a file cannot command a terminal. */
class PlainTextTest {

    @ParameterizedTest
    @ValueSource(chars = {0, 7, 8, 0x1B, 0x7F, 0x80, 0x9B, 0x202A, 0x202E, 0x2066, 0x2069})
    void signsThatCommandATerminalBecomeVisible(char sign) {
        assertEquals("a\uFFFDb", PlainText.line("a" + sign + "b"));
        assertEquals("a\uFFFDb\n", PlainText.lines("a" + sign + "b\n"));
    }

    @ParameterizedTest
    @ValueSource(chars = {'\n', '\r', '\t', 0x85, 0x2028, 0x2029})
    void lineEndsFakeNoLine(char sign) {
        assertEquals("a b", PlainText.line("a" + sign + "b"));
    }

    @Test
    void ordinaryTextStaysTheSame() {
        String text = "Mrs Ó’Brien’s (ｆａｓｔ) 𝄞 שלום";
        assertEquals(text, PlainText.line(text));
        assertEquals("two\nlines", PlainText.lines("two\nlines"));
        assertEquals("two\r\nlines\uFFFD", PlainText.lines("two\r\nlines\r"));
    }

    @Test
    void aRemarkIsOneLineWhateverItQuotes() {
        Diagnostic remark = Diagnostic.error(
                DiagnosticCode.BAD_VALUE, Place.measure(1, "1\u001B[2J", "P\n1"), "The value \"a\nb\".", "Maybe\rnot.");
        assertEquals(
                "my file: measure 1\uFFFD[2J (1 in the file), part P 1: error [bad-value] The value \"a b\".\n  Maybe not.",
                remark.print("my\nfile"));
    }
}
