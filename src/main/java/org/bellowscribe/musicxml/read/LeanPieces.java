package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.ContentHandler;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.AttributesImpl;

/**
 * Collects what a parser would tell of the lean score: the head once, the measures part by part, also if they come
 * measure by measure.
 */
final class LeanPieces {

    private static final AttributesImpl NONE = new AttributesImpl();

    private final List<Piece> head = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private List<Piece> target = head;

    /** Something that a parser tells. */
    private sealed interface Piece {
        void tell(ContentHandler handler) throws SAXException;
    }

    private record Start(String name, AttributesImpl attributes) implements Piece {
        @Override
        public void tell(ContentHandler handler) throws SAXException {
            handler.startElement("", name, name, attributes);
        }
    }

    private record Text(String value) implements Piece {
        @Override
        public void tell(ContentHandler handler) throws SAXException {
            handler.characters(value.toCharArray(), 0, value.length());
        }
    }

    private record End(String name) implements Piece {
        @Override
        public void tell(ContentHandler handler) throws SAXException {
            handler.endElement("", name, name);
        }
    }

    private static final class Part {
        private final String id;
        private final List<Piece> measures = new ArrayList<>();
        private int count;

        Part(String id) {
            this.id = id;
        }
    }

    /** Opens a new part and returns its index. */
    int newPart(String id) {
        parts.add(new Part(id));
        return parts.size() - 1;
    }

    /** Returns the index of a part, opening it if it is new. */
    int part(String id) {
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).id.equals(id)) {
                return i;
            }
        }
        return newPart(id);
    }

    /** Starts a measure; a part that was silent in earlier measures gets empty ones, so that all stay in step. */
    void startMeasure(int part, int index, String number) {
        Part current = parts.get(part);
        target = current.measures;
        while (current.count < index) {
            startTag("measure", numbered(""));
            endTag("measure");
            current.count++;
        }
        current.count++;
        startTag("measure", numbered(number));
    }

    private static AttributesImpl numbered(String number) {
        AttributesImpl attributes = new AttributesImpl();
        add(attributes, "number", number);
        return attributes;
    }

    void endMeasure() {
        endTag("measure");
        target = head;
    }

    /** Adds an attribute to those of an element. */
    static void add(AttributesImpl attributes, String name, String value) {
        attributes.addAttribute("", name, name, "CDATA", value);
    }

    void startTag(String name, AttributesImpl attributes) {
        target.add(new Start(name, attributes));
    }

    void endTag(String name) {
        target.add(new End(name));
    }

    void text(String value) {
        target.add(new Text(value));
    }

    List<String> partIds() {
        return parts.stream().map(part -> part.id).toList();
    }

    /** Tells the whole score as a parser would. */
    void tell(ContentHandler handler) throws SAXException {
        handler.startDocument();
        handler.startElement("", "score-partwise", "score-partwise", NONE);
        tell(head, handler);
        for (Part part : parts) {
            handler.startElement("", "part", "part", NONE);
            tell(part.measures, handler);
            handler.endElement("", "part", "part");
        }
        handler.endElement("", "score-partwise", "score-partwise");
        handler.endDocument();
    }

    private static void tell(List<Piece> pieces, ContentHandler handler) throws SAXException {
        for (Piece piece : pieces) {
            piece.tell(handler);
        }
    }
}
