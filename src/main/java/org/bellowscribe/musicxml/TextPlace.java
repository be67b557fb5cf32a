package org.bellowscribe.musicxml;

import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;

/** Lines and columns of a text. */
final class TextPlace {

    private static final int LONGEST_NAME = 60;

    private TextPlace() {}

    /**
     * Returns the line and column of a character. LF, CR and CR LF each end one line.
     *
     * @param text the text
     * @param offset 0-based place of the character; may be the text's length
     */
    static Place of(CharSequence text, int offset) {
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < offset; i++) {
            char c = text.charAt(i);
            boolean crOfCrLf = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
            if (c == '\n' || (c == '\r' && !crOfCrLf)) {
                line++;
                lineStart = i + 1;
            }
        }
        return Place.line(line, offset - lineStart + 1);
    }

    /** Returns a name fit for a message: as it is, or its beginning if it is very long. */
    static String shortened(String name) {
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME) + "...";
    }

    /** Returns the refusal of a text that breaks XML's rules at an offset. */
    static DiagnosedException notXml(CharSequence text, int offset, String sentence) {
        return new DiagnosedException(Diagnostic.error(
                DiagnosticCode.NOT_XML,
                of(text, offset),
                sentence,
                "Maybe export the score again from the program that wrote it."));
    }
}
