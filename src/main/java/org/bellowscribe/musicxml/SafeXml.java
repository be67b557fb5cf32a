package org.bellowscribe.musicxml;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.Locale;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import javax.xml.validation.SchemaFactory;
import org.xml.sax.ContentHandler;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/**
 * The one place that makes XML parsers for scores. None of them fetches anything outside the text it is given, entities
 * cannot multiply, and a DOCTYPE is allowed because nearly every score has one.
 *
 * <p>Parsers for scores know no namespaces: real scores use the {@code xlink:} prefix without declaring it.
 */
public final class SafeXml {

    /** Entity references that one text may hold; far more than any score needs. */
    static final int MAX_ENTITY_REFERENCES = 1_000;

    /** Characters that all entities of one text may add together. */
    static final int MAX_ENTITY_CHARACTERS = 1_000_000;

    private static final String LIMITS = "http://www.oracle.com/xml/jaxp/properties/";
    private static final String FEATURES = "http://xml.org/sax/features/";
    private static final String LOAD_EXTERNAL_DTD = "http://apache.org/xml/features/nonvalidating/load-external-dtd";
    private static final String LOCALE = "http://apache.org/xml/properties/locale";

    private static final DefaultHandler NOBODY = new DefaultHandler();

    private SafeXml() {}

    // Building a parser costs as much as parsing a short tune; each thread keeps one. A parse begins with a reset.
    private static final ThreadLocal<XMLReader> READER = ThreadLocal.withInitial(SafeXml::reader);

    /**
     * Parses a text by the thread's own SAX reader, which is like {@link #reader}.
     *
     * @param content told the elements
     * @param errors told what is wrong
     */
    public static void parse(String text, ContentHandler content, ErrorHandler errors) throws SAXException {
        XMLReader reader = READER.get();
        reader.setContentHandler(content);
        reader.setErrorHandler(errors);
        try {
            reader.parse(source(text));
        } catch (IOException e) {
            throw new UncheckedIOException("A text in memory cannot fail to be read.", e);
        } finally {
            reader.setContentHandler(NOBODY);
            reader.setErrorHandler(NOBODY);
        }
    }

    /** Returns a new SAX reader without namespaces, whose messages are in English on every machine. */
    public static XMLReader reader() {
        try {
            SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature(FEATURES + "external-general-entities", false);
            factory.setFeature(FEATURES + "external-parameter-entities", false);
            factory.setFeature(LOAD_EXTERNAL_DTD, false);
            factory.setNamespaceAware(false);
            SAXParser parser = factory.newSAXParser();
            parser.setProperty(LIMITS + "entityExpansionLimit", String.valueOf(MAX_ENTITY_REFERENCES));
            parser.setProperty(LIMITS + "totalEntitySizeLimit", String.valueOf(MAX_ENTITY_CHARACTERS));
            parser.setProperty(LOCALE, Locale.ENGLISH);
            XMLReader reader = parser.getXMLReader();
            // The default handler prints to the standard error stream; this one only throws.
            reader.setErrorHandler(new DefaultHandler());
            return reader;
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException("This JDK has no safe SAX parser.", e);
        }
    }

    /** Returns a new factory of schemas that reads only the sources it is given. */
    static SchemaFactory schemaFactory() {
        try {
            SchemaFactory factory = SchemaFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            factory.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
            return factory;
        } catch (SAXException e) {
            throw new IllegalStateException("This JDK has no safe schema factory.", e);
        }
    }

    /** Returns what a parser says, without its own number for it. */
    public static String sentence(SAXException e) {
        return e.getMessage() == null
                ? ""
                : e.getMessage().replaceFirst("^JAXP\\d+:\\s*", "").strip();
    }

    /** Returns a decoded text as input for one of the parsers; its encoding declaration no longer matters. */
    public static InputSource source(String text) {
        return new InputSource(new StringReader(text));
    }
}
