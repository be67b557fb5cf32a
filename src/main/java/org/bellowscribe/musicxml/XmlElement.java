package org.bellowscribe.musicxml;

import org.jspecify.annotations.Nullable;

/** An element and where it stands in the text. All offsets are 0-based. */
final class XmlElement {

    private final String text;
    private final @Nullable XmlElement parent;
    private final int depth;
    private final int nameLength;
    private final int before;
    private final int start;
    private final int contentStart;
    private int contentEnd;
    private int end;

    XmlElement(String text, @Nullable XmlElement parent, XmlTokens tag, int before) {
        this.text = text;
        this.parent = parent;
        this.depth = parent == null ? 1 : parent.depth + 1;
        this.nameLength = tag.nameEnd() - tag.nameStart();
        this.before = before;
        this.start = tag.start();
        this.contentStart = tag.end();
    }

    void close(int contentEnd, int end) {
        this.contentEnd = contentEnd;
        this.end = end;
    }

    /** Returns the name with its prefix. */
    String name() {
        return text.substring(start + 1, start + 1 + nameLength);
    }

    /** Tells whether it has a name, with its prefix. */
    boolean is(String name) {
        return name.length() == nameLength && text.startsWith(name, start + 1);
    }

    /** Tells whether an end tag has its name. */
    boolean isEndedBy(XmlTokens tag) {
        return tag.nameEnd() - tag.nameStart() == nameLength
                && text.regionMatches(start + 1, text, tag.nameStart(), nameLength);
    }

    /** Returns the element around this one; null for the root. */
    @Nullable
    XmlElement parent() {
        return parent;
    }

    /** Tells whether the element around this one has a name. */
    boolean isIn(String parentName) {
        return parent != null && parent.is(parentName);
    }

    /** Returns how many elements stand around it, itself counted: 1 for the root. */
    int depth() {
        return depth;
    }

    /** Returns the end of the markup directly before the element, whatever it is; 0 if there is none. */
    int before() {
        return before;
    }

    /** Returns the place of the {@code <} of the start tag. */
    int start() {
        return start;
    }

    /** Returns the place after the start tag. */
    int contentStart() {
        return contentStart;
    }

    /** Returns the place of the end tag; known only once the element has ended. */
    int contentEnd() {
        return contentEnd;
    }

    /** Tells whether the start tag holds more than the name. */
    boolean hasAttributes() {
        return text.substring(start + 1 + nameLength, contentStart - 1).indexOf('=') >= 0;
    }

    /** Returns the place after the end tag; known only once the element has ended. */
    int end() {
        return end;
    }

    /** Tells whether one tag starts and ends the element; known only once the element has ended. */
    boolean isOneTag() {
        return contentStart == end;
    }

    /** Returns the text inside as it stands, without white space around it; empty if there is markup in it. */
    String plainContent() {
        String content = text.substring(contentStart, Math.max(contentStart, contentEnd));
        return content.indexOf('<') < 0 ? content.strip() : "";
    }

    /** Returns the line break and indentation before the element; empty if something else stands on its line. */
    String indentation() {
        int from = spaceStart();
        int i = start - 1;
        while (i >= from && text.charAt(i) != '\n' && text.charAt(i) != '\r') {
            i--;
        }
        if (i < from) {
            return "";
        }
        boolean crLf = i > from && text.charAt(i) == '\n' && text.charAt(i - 1) == '\r';
        return text.substring(crLf ? i - 1 : i, start);
    }

    /** Returns where the run of white space before the element begins. */
    int spaceStart() {
        int i = start;
        while (i > before && XmlTokens.isSpace(text.charAt(i - 1))) {
            i--;
        }
        return i;
    }

    /** Returns the value of an attribute as it stands between its quotation marks; null if there is no such attribute. */
    @Nullable
    String attribute(String wanted) {
        int i = start + 1 + nameLength;
        while (i < contentStart) {
            int nameStart = skipSpace(i);
            int nameEnd = XmlTokens.nameEnd(text, nameStart);
            int quote = skipSpace(skipSpace(nameEnd) + 1);
            if (nameEnd == nameStart || quote >= contentStart) {
                return null;
            }
            int close = text.indexOf(text.charAt(quote), quote + 1);
            if (close < 0 || close >= contentStart) {
                return null;
            }
            if (text.startsWith(wanted, nameStart) && nameEnd - nameStart == wanted.length()) {
                return text.substring(quote + 1, close);
            }
            i = close + 1;
        }
        return null;
    }

    private int skipSpace(int from) {
        int i = from;
        while (i < contentStart && XmlTokens.isSpace(text.charAt(i))) {
            i++;
        }
        return i;
    }
}
