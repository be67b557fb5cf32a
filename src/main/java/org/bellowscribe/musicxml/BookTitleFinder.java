package org.bellowscribe.musicxml;

/** Finds what a score says it is taken from: the content of {@code <source>} in its identification. */
final class BookTitleFinder implements XmlVisitor {

    private String title = "";

    /** Returns the title; empty if the score does not say. */
    String title() {
        return title;
    }

    @Override
    public void end(XmlElement element) {
        if (title.isEmpty() && element.is("source") && element.isIn("identification")) {
            title = XmlText.unescape(element.plainContent()).strip();
        }
    }
}
