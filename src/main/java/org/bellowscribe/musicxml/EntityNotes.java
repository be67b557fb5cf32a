package org.bellowscribe.musicxml;

import java.util.ArrayDeque;
import java.util.Deque;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Counts notes as a parser sees them, entities resolved.
 *
 * <p>A note that comes out of an entity stands nowhere in the text, so that no mark could be put on it, and all notes
 * after it would be counted differently by the reader and by the writer of marks.
 */
final class EntityNotes extends DefaultHandler {

    private final Deque<String> open = new ArrayDeque<>();
    private int notes;

    private EntityNotes() {}

    /**
     * Refuses a text in which notes come out of entities.
     *
     * @param text a text
     * @param noteCount number of notes that stand in it
     */
    static void requireNone(String text, int noteCount) throws DiagnosedException {
        if (text.contains("<!ENTITY") && count(text) != noteCount) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.NOT_MUSICXML,
                    Place.FILE,
                    "Some notes of the score stand in entities of its DOCTYPE and cannot be marked.",
                    "Maybe open the score in a notation program and export it again."));
        }
    }

    /** Returns the number of notes in measures. */
    static int count(String text) throws DiagnosedException {
        EntityNotes counter = new EntityNotes();
        try {
            SafeXml.parse(text, counter, counter);
            return counter.notes;
        } catch (SAXParseException e) {
            throw notWellFormed(Place.line(Math.max(0, e.getLineNumber()), Math.max(0, e.getColumnNumber())), e);
        } catch (SAXException e) {
            throw notWellFormed(Place.FILE, e);
        }
    }

    @Override
    public void startElement(String uri, String localName, String name, Attributes attributes) {
        if (name.equals("note") && open.size() == 3) {
            String inner = open.pop();
            String outer = open.element();
            open.push(inner);
            notes += (inner.equals("measure") && outer.equals("part"))
                            || (inner.equals("part") && outer.equals("measure"))
                    ? 1
                    : 0;
        }
        open.push(name);
    }

    @Override
    public void endElement(String uri, String localName, String name) {
        open.pop();
    }

    private static DiagnosedException notWellFormed(Place place, SAXException e) {
        String message = SafeXml.sentence(e);
        return new DiagnosedException(
                Diagnostic.error(DiagnosticCode.NOT_XML, place, "The file is not well-formed XML: " + message));
    }
}
