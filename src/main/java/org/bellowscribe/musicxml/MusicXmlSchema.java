package org.bellowscribe.musicxml;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.xml.transform.Source;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import javax.xml.validation.ValidatorHandler;
import org.xml.sax.SAXException;

/**
 * The official MusicXML 4.0 schema. Source: W3C Music Notation Community Group, MusicXML 4.0, {@code musicxml.xsd}.
 *
 * <p>ProxyMusic ships the schema with some blocks made simpler for its own purpose, the official text of each kept in a
 * comment beside it. Here the official text is put back, so that a note without a duration, say, is found.
 */
final class MusicXmlSchema {

    /** Blocks that ProxyMusic 4.0.3 changes. */
    static final int CHANGED_BLOCKS = 8;

    private static final String SCORE = "/META-INF/jaxb/xsd/musicxml.xsd";
    private static final String XLINK = "/org/xmlresolver/www.w3.org/1999/xlink.xsd";
    private static final String XML = "/org/xmlresolver/www.w3.org/2001/xml.xsd";

    private static final Pattern CHANGED_BLOCK = Pattern.compile(
            "<!--\\s*HB-old\\b(.*?)-->\\s*<!--\\s*HB-new\\s*-->.*?<!--\\s*HB-end\\s*-->", Pattern.DOTALL);

    // The schemas are given together, so that nothing has to be found by its address.
    private static final Pattern ADDRESS =
            Pattern.compile("<xs:import\\b([^>]*?)\\s+schemaLocation=(\"[^\"]*\"|'[^']*')");

    // Whether a schema keeps its own rules: this one is known to, and looking costs time.
    private static final String SCHEMA_IS_CHECKED = "http://apache.org/xml/features/validation/schema-full-checking";

    private static final class Holder {
        static final Schema SCHEMA = compile();
    }

    private MusicXmlSchema() {}

    /** Returns a new validator for one score. The first call in a program compiles the schema; threads share it. */
    static ValidatorHandler validator() {
        return Holder.SCHEMA.newValidatorHandler();
    }

    /** Returns true if MusicXML has an element of this name. */
    static boolean knows(String element) {
        return Names.ELEMENTS.contains(element);
    }

    private static final class Names {
        private static final Pattern ELEMENT = Pattern.compile("<xs:element\\b[^>]*?\\bname=\"([^\"]+)\"");
        static final Set<String> ELEMENTS = ELEMENT.matcher(official(read(SCORE)))
                .results()
                .map(match -> match.group(1))
                .collect(Collectors.toSet());
    }

    private static Schema compile() {
        try {
            Source[] sources = {source(read(XML)), source(read(XLINK)), source(official(read(SCORE)))};
            SchemaFactory factory = SafeXml.schemaFactory();
            factory.setFeature(SCHEMA_IS_CHECKED, false);
            return factory.newSchema(sources);
        } catch (SAXException e) {
            throw new IllegalStateException("The MusicXML schema cannot be compiled.", e);
        }
    }

    /** Returns the official text of the schema that ProxyMusic ships. */
    static String official(String shipped) {
        StringBuilder text = new StringBuilder();
        Matcher changed = CHANGED_BLOCK.matcher(shipped);
        int blocks = 0;
        while (changed.find()) {
            changed.appendReplacement(text, "$1");
            blocks++;
        }
        if (blocks != CHANGED_BLOCKS) {
            throw new IllegalStateException(
                    "The schema in ProxyMusic has " + blocks + " changed blocks instead of " + CHANGED_BLOCKS + ".");
        }
        return changed.appendTail(text).toString();
    }

    private static Source source(String schema) {
        return new StreamSource(new StringReader(ADDRESS.matcher(schema).replaceAll("<xs:import$1")));
    }

    private static String read(String resource) {
        try (InputStream in = MusicXmlSchema.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("The schema (" + resource + ") is not on the class path.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("The schema (" + resource + ") cannot be read.", e);
        }
    }
}
