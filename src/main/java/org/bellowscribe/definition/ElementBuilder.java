package org.bellowscribe.definition;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.Locator;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;
import org.xml.sax.helpers.LocatorImpl;

/** Builds the elements of a file as the parser meets them, and keeps what the schema objects to. */
final class ElementBuilder extends DefaultHandler {

    /** The deepest element of all our schemas is the fourth. */
    private static final int MOST_DEEP = 20;

    private static final Pattern WHITE_SPACE = Pattern.compile("\\s+");

    private final @Nullable AttributeDefaults defaults;
    private final Deque<OpenElement> open = new ArrayDeque<>();
    private final List<SAXParseException> objections = new ArrayList<>();
    private Locator locator = new LocatorImpl();
    private @Nullable DefinitionElement root;
    private boolean isRootSound = true;
    private int seen;

    /** Builds what a validator hands on. */
    ElementBuilder() {
        defaults = null;
    }

    /**
     * Builds what a parser hands on, as a validator would: with the attributes that are left out, and single spaces in
     * texts.
     *
     * @param defaults the attributes that elements have when they leave them out
     */
    ElementBuilder(AttributeDefaults defaults) {
        this.defaults = defaults;
    }

    /** An element whose end tag has not come yet. */
    private record OpenElement(
            String name,
            Map<String, String> attributes,
            Place place,
            List<DefinitionElement> children,
            StringBuilder text,
            boolean[] sound) {

        DefinitionElement close(boolean collapses) {
            String stripped = text.toString().strip();
            String said = collapses ? WHITE_SPACE.matcher(stripped).replaceAll(" ") : stripped;
            return new DefinitionElement(name, attributes, children, said, place);
        }
    }

    /** Elements stand within each other too deep. */
    static final class TooDeepException extends SAXParseException {

        private static final long serialVersionUID = 1L;

        TooDeepException(Locator locator) {
            super("Elements are nested more than %d deep.".formatted(MOST_DEEP), locator);
        }
    }

    @Override
    public void setDocumentLocator(Locator locator) {
        this.locator = locator;
    }

    @Override
    public void startElement(String uri, String localName, String qName, Attributes attributes)
            throws TooDeepException {
        if (open.size() >= MOST_DEEP) {
            throw new TooDeepException(locator);
        }
        OpenElement parent = open.peek();
        Map<String, String> values = new TreeMap<>(
                defaults == null ? Map.of() : defaults.of(parent == null ? "" : parent.name(), localName));
        for (int i = 0; i < attributes.getLength(); i++) {
            values.put(attributes.getLocalName(i), attributes.getValue(i));
        }
        Place place = Place.line(locator.getLineNumber(), locator.getColumnNumber());
        open.push(new OpenElement(
                localName, values, place, new ArrayList<>(), new StringBuilder(), new boolean[] {isSound()}));
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
        OpenElement ended = open.pop();
        DefinitionElement element = ended.close(defaults != null);
        // What is missing in an element that holds others does not spoil those that are there.
        boolean isSound = (isSound() || !element.children().isEmpty()) && ended.sound()[0];
        OpenElement parent = open.peek();
        if (parent == null) {
            root = element;
            isRootSound = isSound;
        } else if (isSound) {
            parent.children().add(element);
        }
    }

    /** Tells whether the schema has had nothing to object to since this was asked before: what belongs to the next tag. */
    private boolean isSound() {
        boolean sound = seen == objections.size();
        seen = objections.size();
        return sound;
    }

    @Override
    public void error(SAXParseException objection) {
        objections.add(objection);
    }

    /** Returns what the schema objects to, in the order of the file. */
    List<SAXParseException> objections() {
        return objections;
    }

    /** Returns true if the schema does not object to the attributes of the root element itself. */
    boolean isRootSound() {
        return isRootSound;
    }

    /** Returns the innermost element that has begun and not ended; null if there is none. */
    @Nullable
    DefinitionElement unclosed() {
        OpenElement innermost = open.peek();
        return innermost == null ? null : innermost.close(false);
    }

    /** Returns the root element of a file that was read to its end. */
    DefinitionElement root() {
        if (root == null) {
            throw new IllegalStateException("The file has not been read to its end.");
        }
        return root;
    }
}
