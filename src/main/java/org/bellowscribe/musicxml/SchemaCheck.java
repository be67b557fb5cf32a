package org.bellowscribe.musicxml;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import javax.xml.validation.ValidatorHandler;
import org.bellowscribe.diagnostic.Place;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Checks a score against the official MusicXML 4.0 schema. Threads may call it; they wait for each other. */
public final class SchemaCheck {

    private static final String LOCALE = "http://apache.org/xml/properties/locale";

    // Building a validator costs as much as checking a short tune, so one serves all checks. Each begins with a reset.
    private static final class Holder {
        static final ValidatorHandler VALIDATOR = validator();
    }

    private SchemaCheck() {}

    private static ValidatorHandler validator() {
        try {
            ValidatorHandler validator = MusicXmlSchema.validator();
            validator.setProperty(LOCALE, Locale.ENGLISH);
            return validator;
        } catch (SAXException e) {
            throw new IllegalStateException("This JDK has no validator that speaks English.", e);
        }
    }

    /** Compiles the schema, most of a second's work; worth doing beside something else. */
    public static void warm() {
        MusicXmlSchema.validator();
    }

    /** Returns true if MusicXML has an element of this name. */
    public static boolean knows(String element) {
        return MusicXmlSchema.knows(element);
    }

    /**
     * Returns all that is against the schema, in the order of the text: an empty list for a valid score, at most
     * {@value SchemaFindings#MAX_FINDINGS} findings for any other. A text that is not well-formed, too large or nested too
     * deep ends in a fatal finding.
     *
     * @param text decoded text of a score
     */
    public static List<SchemaFinding> check(String text) {
        if (isTooLong(text)) {
            return tooLong(text);
        }
        try {
            return run(text, feed -> feed);
        } catch (SchemaFindings.Enough e) {
            return e.findings();
        } catch (SAXException e) {
            throw new IllegalStateException("The schema check broke.", e);
        }
    }

    /**
     * Parses a text once for a reader and for the schema, and returns what {@link #check} would.
     *
     * @param text decoded text of a score
     * @param reader told all that the parser finds
     * @throws SAXException if the reader throws it, or the text is not well-formed
     */
    public static List<SchemaFinding> checkWhileRead(String text, DefaultHandler reader) throws SAXException {
        if (isTooLong(text)) {
            SafeXml.parse(text, reader, reader);
            return tooLong(text);
        }
        return run(text, feed -> new SchemaTee(reader, feed));
    }

    // The JDK's compiled schema counts elements in fields that all its validators share: two at a time find errors
    // that are not there (seen in JDK 17).
    private static synchronized List<SchemaFinding> run(String text, Function<SchemaFeed, DefaultHandler> audience)
            throws SAXException {
        SchemaPosition position = new SchemaPosition();
        SchemaFindings findings = new SchemaFindings(position);
        ValidatorHandler validator = Holder.VALIDATOR;
        validator.setErrorHandler(findings);
        DefaultHandler handler = audience.apply(new SchemaFeed(validator, position, findings));
        SafeXml.parse(text, handler, handler);
        return findings.list();
    }

    private static boolean isTooLong(String text) {
        return text.length() > ScoreDocument.MAX_BYTES;
    }

    private static List<SchemaFinding> tooLong(String text) {
        String message =
                "The text has " + text.length() + " characters, and a score may have " + ScoreDocument.MAX_BYTES + ".";
        return List.of(new SchemaFinding(Place.FILE, "", "", "", message));
    }
}
