package org.bellowscribe.musicxml.read;

import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/** What stands before the XML declaration of a file, where XML allows nothing. */
final class EarlyText {

    private static final String DECLARATION = "<?xml ";

    private EarlyText() {}

    /** Returns the refusal of a text with something before its declaration, or null if nothing stands there. */
    static @Nullable Diagnostic before(String text) {
        int at = text.indexOf(DECLARATION);
        if (at <= 0 || text.lastIndexOf('<', at - 1) >= 0) {
            return null;
        }
        String early = text.substring(0, at);
        int line = 1 + (int) early.chars().filter(each -> each == '\n').count();
        return Diagnostic.error(
                DiagnosticCode.NOT_XML,
                Place.line(line, at - early.lastIndexOf('\n')),
                "%s stands before <?xml, which must be the very first of the file."
                        .formatted(early.isBlank() ? "Blank space" : "Text"),
                "Maybe delete what stands before it.");
    }
}
