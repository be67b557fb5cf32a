package org.bellowscribe.definition;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.io.UnsupportedEncodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import javax.xml.validation.ValidatorHandler;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.XMLReader;

/**
 * The schema of one sort of data file. Its named simple types document the form of their values in words that complete
 * "Maybe write ...", such as "a letter A to G and an octave"; remarks about a wrong value quote them.
 */
public final class DefinitionSchema {

    private static final String FOLDER = "/org/bellowscribe/schemas/";
    private static final String NORMALIZED = "http://apache.org/xml/features/validation/schema/normalized-value";
    private static final String NO_DOCTYPE = "http://apache.org/xml/features/disallow-doctype-decl";
    /** A definition of this size has a thousand times the elements of the largest instrument. */
    static final int MOST_BYTES = 1 << 20;

    private static final String LANGUAGE = "http://apache.org/xml/properties/locale";

    private final String name;
    private @Nullable Compiled compiled;
    private @Nullable AttributeDefaults defaults;

    private DefinitionSchema(String name) {
        this.name = name;
    }

    /** What a validator needs, and costs a twentieth of a second. */
    private record Compiled(Schema schema, ValueForms forms) {}

    /**
     * Returns a schema of this tool, which is loaded when it is first needed.
     *
     * @param name file name, such as {@code instrument.xsd}
     */
    public static DefinitionSchema of(String name) {
        if (DefinitionSchema.class.getResource(FOLDER + name) == null) {
            throw new IllegalArgumentException("The schema (%s) must be in %s.".formatted(name, FOLDER));
        }
        return new DefinitionSchema(name);
    }

    private synchronized Compiled compiled() {
        Compiled known = compiled;
        if (known == null) {
            known = compile();
            compiled = known;
        }
        return known;
    }

    private Compiled compile() {
        try (InputStream stream = open(name)) {
            SchemaFactory factory = SchemaFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            factory.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
            return new Compiled(factory.newSchema(new StreamSource(stream)), new ValueForms(text()));
        } catch (SAXException e) {
            throw new IllegalStateException("The schema (%s) is wrong.".formatted(name), e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private synchronized AttributeDefaults defaults() throws SAXException, IOException {
        AttributeDefaults known = defaults;
        if (known == null) {
            known = saysDefaults() ? new AttributeDefaults(text()) : AttributeDefaults.NONE;
            defaults = known;
        }
        return known;
    }

    // Most schemas have none, and parsing a large one takes longer than the file that is read.
    private boolean saysDefaults() throws IOException {
        try (InputStream stream = open(name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8).contains(" default=");
        }
    }

    /** Returns the schema itself as elements. */
    private DefinitionElement text() throws SAXException, IOException {
        try (InputStream stream = open(name)) {
            return parse(stream, null, new ElementBuilder()).root();
        }
    }

    /**
     * Reads a data file that is known to be valid, as {@link #read} would but for the white space within texts and
     * values, without compiling the schema.
     *
     * @return the root element
     * @throws IOException if the stream cannot be read
     */
    DefinitionElement readAsValid(InputStream file) throws IOException {
        try {
            return parse(file, null, new ElementBuilder(defaults())).root();
        } catch (SAXException e) {
            throw new IllegalStateException("A file for the schema (%s) is no XML.".formatted(name), e);
        }
    }

    /**
     * Reads a data file.
     *
     * @return the root element
     * @throws DiagnosedException with line and column, if the file is no XML or the schema objects to it
     * @throws IOException if the stream cannot be read
     */
    public DefinitionElement read(InputStream file) throws DiagnosedException, IOException {
        Examined examined = examine(file);
        if (!examined.remarks().isEmpty()) {
            throw new DiagnosedException(examined.remarks());
        }
        return examined.root();
    }

    /**
     * What is in a data file, right or wrong.
     *
     * @param root root element, without the elements that the schema objects to
     * @param isRootSound false if the schema objects to the attributes of the root element itself
     * @param remarks what the schema objects to, with line and column; empty if nothing
     */
    public record Examined(DefinitionElement root, boolean isRootSound, List<Diagnostic> remarks) {
        /** Copies the remarks. */
        public Examined {
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * Reads a data file as far as it can be read.
     *
     * @throws DiagnosedException with line and column, if the file is no XML, or is too large or nested too deep
     * @throws IOException if the stream cannot be read
     */
    public Examined examine(InputStream file) throws DiagnosedException, IOException {
        byte[] bytes = file.readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.BAD_DEFINITION,
                    Place.FILE,
                    "The file has more than %d bytes, the most that are read here.".formatted(MOST_BYTES)));
        }
        ElementBuilder builder = new ElementBuilder();
        try {
            Compiled known = compiled();
            parse(new ByteArrayInputStream(bytes), known.schema(), builder);
            return new Examined(
                    builder.root(),
                    builder.isRootSound(),
                    SchemaObjection.remarks(builder.objections(), known.forms()));
        } catch (SAXParseException e) {
            throw new DiagnosedException(notXml(bytes, builder, e));
        } catch (UnsupportedEncodingException e) {
            throw new DiagnosedException(MalformedXml.error(
                    Place.line(1, 1),
                    "The file says that it is written in %s, an encoding not known here.".formatted(e.getMessage()),
                    "Maybe save it as UTF-8."));
        } catch (SAXException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Diagnostic notXml(byte[] file, ElementBuilder parsed, SAXParseException e) {
        String message = String.valueOf(e.getMessage());
        if (e instanceof ElementBuilder.TooDeepException) {
            return Diagnostic.error(DiagnosticCode.BAD_DEFINITION, MalformedXml.place(e), message);
        }
        return message.contains(NO_DOCTYPE)
                ? Diagnostic.error(
                        DiagnosticCode.BAD_DEFINITION,
                        MalformedXml.place(e),
                        "The file has a DOCTYPE, which is not allowed here.",
                        "Maybe remove the line that begins with <!DOCTYPE.")
                : MalformedXml.remark(file, parsed, e);
    }

    private static ElementBuilder parse(InputStream stream, @Nullable Schema schema, ElementBuilder builder)
            throws SAXException, IOException {
        XMLReader reader = reader();
        reader.setContentHandler(schema == null ? builder : validating(schema, builder));
        reader.setErrorHandler(builder);
        reader.parse(new InputSource(stream));
        return builder;
    }

    private static XMLReader reader() {
        try {
            SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature(NO_DOCTYPE, true);
            XMLReader reader = factory.newSAXParser().getXMLReader();
            // Not ENGLISH: that falls back to the language of the computer.
            reader.setProperty(LANGUAGE, Locale.ROOT);
            return reader;
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException("This JDK has no safe SAX parser.", e);
        }
    }

    private static ValidatorHandler validating(Schema schema, ElementBuilder builder) throws SAXException {
        ValidatorHandler validator = schema.newValidatorHandler();
        validator.setProperty(LANGUAGE, Locale.ROOT);
        // Values come as the schema reads them: of a token without the white space around it.
        validator.setFeature(NORMALIZED, true);
        validator.setContentHandler(builder);
        validator.setErrorHandler(builder);
        return validator;
    }

    private static InputStream open(String name) {
        return Objects.requireNonNull(DefinitionSchema.class.getResourceAsStream(FOLDER + name));
    }
}
