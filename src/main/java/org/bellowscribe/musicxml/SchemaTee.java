package org.bellowscribe.musicxml;

import org.xml.sax.Attributes;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/** Lets a reader and the schema check hear the same parse. When the check has had enough, the reader hears on alone. */
final class SchemaTee extends DefaultHandler {

    private final DefaultHandler reader;
    private DefaultHandler check;

    SchemaTee(DefaultHandler reader, SchemaFeed check) {
        this.reader = reader;
        this.check = check;
    }

    /** Something that the check is told. */
    @FunctionalInterface
    private interface Told {
        void by(DefaultHandler handler) throws SAXException;
    }

    private void check(Told told) throws SAXException {
        try {
            told.by(check);
        } catch (SchemaFindings.Enough e) {
            check = new DefaultHandler();
        }
    }

    @Override
    public void setDocumentLocator(Locator locator) {
        reader.setDocumentLocator(locator);
        check.setDocumentLocator(locator);
    }

    @Override
    public void startDocument() throws SAXException {
        reader.startDocument();
        check(DefaultHandler::startDocument);
    }

    @Override
    public void endDocument() throws SAXException {
        reader.endDocument();
        check(DefaultHandler::endDocument);
    }

    @Override
    public void startElement(String uri, String localName, String name, Attributes attributes) throws SAXException {
        reader.startElement(uri, localName, name, attributes);
        check(handler -> handler.startElement(uri, localName, name, attributes));
    }

    @Override
    public void endElement(String uri, String localName, String name) throws SAXException {
        reader.endElement(uri, localName, name);
        check(handler -> handler.endElement(uri, localName, name));
    }

    @Override
    public void characters(char[] text, int start, int length) throws SAXException {
        reader.characters(text, start, length);
        check(handler -> handler.characters(text, start, length));
    }

    @Override
    public void ignorableWhitespace(char[] text, int start, int length) throws SAXException {
        reader.ignorableWhitespace(text, start, length);
        check(handler -> handler.ignorableWhitespace(text, start, length));
    }

    @Override
    public void skippedEntity(String name) throws SAXException {
        reader.skippedEntity(name);
        check(handler -> handler.skippedEntity(name));
    }

    @Override
    public void error(SAXParseException exception) throws SAXException {
        check(handler -> handler.error(exception));
    }

    @Override
    public void fatalError(SAXParseException exception) throws SAXException {
        check(handler -> handler.fatalError(exception));
        reader.fatalError(exception);
    }
}
