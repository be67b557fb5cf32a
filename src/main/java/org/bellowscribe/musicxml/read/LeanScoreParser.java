package org.bellowscribe.musicxml.read;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Parses the text of a score safely: nothing outside it is read, and entities that swell are refused. */
final class LeanScoreParser {

    private LeanScoreParser() {}

    /**
     * Parses a score.
     *
     * @param text the decoded text
     * @throws DiagnosedException if it is not well-formed or no score
     */
    static LeanScore parse(String text) throws DiagnosedException {
        if (text.isBlank()) {
            throw new DiagnosedException(Diagnostic.error(DiagnosticCode.EMPTY_FILE, Place.FILE, "The file is empty."));
        }
        ScoreFilter filter = new ScoreFilter();
        try {
            parser().parse(new InputSource(new StringReader(text)), filter);
        } catch (ScoreFilter.Refusal e) {
            throw new DiagnosedException(e.diagnostic());
        } catch (SAXParseException e) {
            throw new DiagnosedException(notWellFormed(e));
        } catch (SAXException e) {
            throw new DiagnosedException(
                    Diagnostic.error(DiagnosticCode.NOT_XML, Place.FILE, "The file cannot be parsed as XML."));
        } catch (IOException e) {
            throw new UncheckedIOException("A string cannot fail to be read.", e);
        }
        return filter.finish();
    }

    private static Diagnostic notWellFormed(SAXParseException e) {
        String message = e.getMessage() == null ? "" : e.getMessage().strip();
        return Diagnostic.error(
                DiagnosticCode.NOT_XML,
                Place.line(Math.max(0, e.getLineNumber()), Math.max(0, e.getColumnNumber())),
                "The file is not well-formed XML: " + message + (message.endsWith(".") ? "" : "."),
                "Maybe it was cut off; export it again.");
    }

    private static SAXParser parser() throws SAXException {
        try {
            SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
            factory.setNamespaceAware(false);
            factory.setValidating(false);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            SAXParser parser = factory.newSAXParser();
            parser.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            parser.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
            // A score needs no entities of its own; a few harmless ones are let pass.
            parser.setProperty("jdk.xml.entityExpansionLimit", "1000");
            parser.setProperty("jdk.xml.totalEntitySizeLimit", "1000000");
            parser.setProperty("jdk.xml.maxGeneralEntitySizeLimit", "100000");
            parser.setProperty("jdk.xml.elementAttributeLimit", "200");
            return parser;
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("The JDK's own parser must know these settings.", e);
        }
    }
}
