package org.bellowscribe.musicxml;

import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.jspecify.annotations.Nullable;

/** Walks over the elements of a text once, without recursion, and checks that they nest. */
final class XmlWalk {

    /** Elements that may stand inside each other; real scores need about ten. */
    static final int MAX_DEPTH = 1_000;

    private final String text;
    private final List<XmlVisitor> visitors;
    private @Nullable XmlElement open;
    private int lastEnd;

    private XmlWalk(String text, List<XmlVisitor> visitors) {
        this.text = text;
        this.visitors = visitors;
    }

    /**
     * Shows every element to the visitors.
     *
     * @throws DiagnosedException if tags are not closed, do not match or nest too deep
     */
    static void over(String text, XmlVisitor... visitors) throws DiagnosedException {
        new XmlWalk(text, List.of(visitors)).walk();
    }

    private void walk() throws DiagnosedException {
        XmlTokens tokens = new XmlTokens(text);
        while (tokens.next()) {
            switch (tokens.kind()) {
                case START -> start(tokens);
                case EMPTY -> {
                    start(tokens);
                    end(tokens.end(), tokens.end());
                }
                case END -> closeTag(tokens);
                case OTHER -> {}
            }
            lastEnd = tokens.end();
        }
        if (open != null) {
            throw TextPlace.notXml(
                    text, open.start(), "The element <" + TextPlace.shortened(open.name()) + "> has no end tag.");
        }
    }

    private void start(XmlTokens tokens) throws DiagnosedException {
        XmlElement element = new XmlElement(text, open, tokens, lastEnd);
        open = element;
        if (element.depth() > MAX_DEPTH) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.NOT_MUSICXML,
                    TextPlace.of(text, tokens.start()),
                    "Elements stand inside each other more than " + MAX_DEPTH + " deep."));
        }
        for (XmlVisitor visitor : visitors) {
            visitor.start(element);
        }
    }

    private void closeTag(XmlTokens tokens) throws DiagnosedException {
        if (open == null || !open.isEndedBy(tokens)) {
            String wanted = open == null ? "no element is open" : "<" + TextPlace.shortened(open.name()) + "> is open";
            String found = TextPlace.shortened(tokens.name());
            throw TextPlace.notXml(text, tokens.start(), "The end tag </" + found + "> stands where " + wanted + ".");
        }
        end(tokens.start(), tokens.end());
    }

    private void end(int contentEnd, int end) {
        XmlElement element = open;
        if (element != null) {
            element.close(contentEnd, end);
            open = element.parent();
            for (XmlVisitor visitor : visitors) {
                visitor.end(element);
            }
        }
    }
}
