package org.bellowscribe.definition;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.Locator;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;
import org.xml.sax.helpers.LocatorImpl;

/** Builds the elements of a file as the parser meets them, and keeps what the schema objects to. */
final class ElementBuilder extends DefaultHandler {

    private final Deque<OpenElement> open = new ArrayDeque<>();
    private final List<SAXParseException> objections = new ArrayList<>();
    private Locator locator = new LocatorImpl();
    private @Nullable DefinitionElement root;

    /** An element whose end tag has not come yet. */
    private record OpenElement(
            String name,
            Map<String, String> attributes,
            Place place,
            List<DefinitionElement> children,
            StringBuilder text) {

        DefinitionElement close() {
            return new DefinitionElement(
                    name, attributes, children, text.toString().strip(), place);
        }
    }

    @Override
    public void setDocumentLocator(Locator locator) {
        this.locator = locator;
    }

    @Override
    public void startElement(String uri, String localName, String qName, Attributes attributes) {
        Map<String, String> values = new TreeMap<>();
        for (int i = 0; i < attributes.getLength(); i++) {
            values.put(attributes.getLocalName(i), attributes.getValue(i));
        }
        Place place = Place.line(locator.getLineNumber(), locator.getColumnNumber());
        open.push(new OpenElement(localName, values, place, new ArrayList<>(), new StringBuilder()));
    }

    @Override
    public void characters(char[] text, int start, int length) {
        OpenElement element = open.peek();
        if (element != null) {
            element.text().append(text, start, length);
        }
    }

    @Override
    public void endElement(String uri, String localName, String qName) {
        DefinitionElement element = open.pop().close();
        OpenElement parent = open.peek();
        if (parent == null) {
            root = element;
        } else {
            parent.children().add(element);
        }
    }

    @Override
    public void error(SAXParseException objection) {
        objections.add(objection);
    }

    /** Returns what the schema objects to, in the order of the file. */
    List<SAXParseException> objections() {
        return objections;
    }

    /** Returns the root element of a file that was read to its end. */
    DefinitionElement root() {
        if (root == null) {
            throw new IllegalStateException("The file has not been read to its end.");
        }
        return root;
    }
}
