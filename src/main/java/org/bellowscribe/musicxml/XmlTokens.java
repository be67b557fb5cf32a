package org.bellowscribe.musicxml;

import org.bellowscribe.diagnostic.DiagnosedException;

/**
 * A cursor over the markup of a text, with exact offsets. Text between markup is passed over.
 *
 * <p>It finds where each piece of markup begins and ends and no more: what is inside a DOCTYPE, a comment, a processing
 * instruction or a CDATA section is never taken for an element. Names and prefixes mean nothing to it.
 */
final class XmlTokens {

    /** What a piece of markup is. */
    enum Kind {
        /** A start tag. */
        START,
        /** An end tag. */
        END,
        /** A tag that starts and ends its element. */
        EMPTY,
        /** Comment, CDATA section, DOCTYPE, XML declaration or other processing instruction. */
        OTHER
    }

    private final String text;
    private Kind kind = Kind.OTHER;
    private int start;
    private int end;
    private int nameEnd;

    XmlTokens(String text) {
        this.text = text;
    }

    /**
     * Moves to the next piece of markup.
     *
     * @return false if there is none
     * @throws DiagnosedException if a piece of markup is never closed
     */
    boolean next() throws DiagnosedException {
        start = text.indexOf('<', end);
        if (start < 0) {
            start = text.length();
            return false;
        }
        switch (start + 1 < text.length() ? text.charAt(start + 1) : ' ') {
            case '!', '?' -> readOther();
            default -> readTag();
        }
        return true;
    }

    private void readOther() throws DiagnosedException {
        kind = Kind.OTHER;
        if (text.startsWith("<!--", start)) {
            end = after("-->", start + 4, "comment");
        } else if (text.startsWith("<![CDATA[", start)) {
            end = after("]]>", start + 9, "CDATA section");
        } else if (text.startsWith("<!", start)) {
            end = doctypeEnd();
        } else {
            end = after("?>", start + 2, "processing instruction");
        }
    }

    Kind kind() {
        return kind;
    }

    /** Returns the 0-based place of the {@code <}. */
    int start() {
        return start;
    }

    /** Returns the 0-based place after the {@code >}. */
    int end() {
        return end;
    }

    /** Returns the name of the element of a tag, with its prefix. */
    String name() {
        return text.substring(nameStart(), nameEnd);
    }

    /** Returns where the name of the element of a tag begins. */
    int nameStart() {
        return kind == Kind.END ? start + 2 : start + 1;
    }

    /** Returns the place after the name of the element of a tag. */
    int nameEnd() {
        return nameEnd;
    }

    /** Returns the end of the name that begins at an offset. */
    static int nameEnd(String text, int from) {
        int i = from;
        while (i < text.length() && isNamePart(text.charAt(i))) {
            i++;
        }
        return i;
    }

    /** Tells whether a character is white space by XML's rules. */
    static boolean isSpace(char c) {
        return c == ' ' || c == '\t' || c == '\n' || c == '\r';
    }

    private static boolean isNamePart(char c) {
        // Nearly every character of a name is a letter, so that one comparison tells.
        return c > '>' || !(isSpace(c) || c == '/' || c == '>' || c == '=' || c == '<' || c == '"' || c == '\'');
    }

    private void readTag() throws DiagnosedException {
        boolean closing = text.startsWith("</", start);
        int from = closing ? start + 2 : start + 1;
        nameEnd = nameEnd(text, from);
        if (nameEnd == from) {
            throw TextPlace.notXml(text, start, "A '<' stands in the text that begins no tag.");
        }
        int close = quotedUntil(nameEnd, '>', '>', "tag");
        end = close + 1;
        if (closing) {
            kind = Kind.END;
        } else {
            kind = text.charAt(close - 1) == '/' ? Kind.EMPTY : Kind.START;
        }
    }

    /** Returns the place of the first of two characters outside quotation marks. */
    private int quotedUntil(int from, char stop, char otherStop, String what) throws DiagnosedException {
        int i = from;
        while (i < text.length()) {
            char c = text.charAt(i);
            if (c == stop || c == otherStop) {
                return i;
            }
            if (c == '<') {
                break;
            }
            if (c == '"' || c == '\'') {
                i = text.indexOf(c, i + 1);
                if (i < 0) {
                    break;
                }
            }
            i++;
        }
        throw unclosed(what);
    }

    private int doctypeEnd() throws DiagnosedException {
        int stop = quotedUntil(start + 2, '[', '>', "DOCTYPE");
        if (text.charAt(stop) == '>') {
            return stop + 1;
        }
        int i = stop + 1;
        while (i < text.length() && text.charAt(i) != ']') {
            i = subsetPieceEnd(i);
        }
        return after(">", i, "DOCTYPE");
    }

    /** Returns the end of the declaration, comment, instruction or single character that begins at an offset. */
    private int subsetPieceEnd(int i) throws DiagnosedException {
        if (text.startsWith("<!--", i)) {
            return after("-->", i + 4, "DOCTYPE");
        }
        if (text.startsWith("<?", i)) {
            return after("?>", i + 2, "DOCTYPE");
        }
        return text.charAt(i) == '<' ? quotedUntil(i + 1, '>', '>', "DOCTYPE") + 1 : i + 1;
    }

    private int after(String closing, int from, String what) throws DiagnosedException {
        int i = text.indexOf(closing, from);
        if (i < 0) {
            throw unclosed(what);
        }
        return i + closing.length();
    }

    private DiagnosedException unclosed(String what) {
        return TextPlace.notXml(text, start, "The " + what + " is not closed.");
    }
}
