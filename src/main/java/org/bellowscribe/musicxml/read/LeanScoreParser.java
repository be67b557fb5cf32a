package org.bellowscribe.musicxml.read;

import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.SafeXml;
import org.bellowscribe.musicxml.SchemaCheck;
import org.bellowscribe.musicxml.SchemaFinding;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Parses the text of a score safely: nothing outside it is read, and entities that swell are refused. */
final class LeanScoreParser {

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** A score and what in it is against the schema. */
    record Checked(LeanScore score, List<SchemaFinding> findings) {}

    /** A way to parse a text. */
    @FunctionalInterface
    private interface Parse {
        List<SchemaFinding> run(String text, ScoreFilter filter) throws SAXException;
    }

    private LeanScoreParser() {}

    /**
     * Parses a score.
     *
     * @param text the decoded text
     * @throws DiagnosedException if it is not well-formed or no score
     */
    static LeanScore parse(String text) throws DiagnosedException {
        return run(text, (plain, filter) -> {
                    SafeXml.parse(plain, filter, filter);
                    return List.of();
                })
                .score();
    }

    /**
     * Parses a score and checks it against the schema, all in one parse.
     *
     * @param text the decoded text
     * @throws DiagnosedException if it is not well-formed or no score
     */
    static Checked parseAndCheck(String text) throws DiagnosedException {
        return run(text, SchemaCheck::checkWhileRead);
    }

    private static Checked run(String text, Parse parse) throws DiagnosedException {
        String plain = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        if (plain.isBlank()) {
            throw new DiagnosedException(Diagnostic.error(DiagnosticCode.EMPTY_FILE, Place.FILE, "The file is empty."));
        }
        ScoreFilter filter = new ScoreFilter();
        try {
            List<SchemaFinding> findings = parse.run(plain, filter);
            return new Checked(filter.finish(), findings);
        } catch (ScoreFilter.Refusal e) {
            throw new DiagnosedException(e.diagnostic());
        } catch (SAXParseException e) {
            Diagnostic before = EarlyText.before(plain);
            throw new DiagnosedException(before == null ? notWellFormed(e) : before);
        } catch (SAXException e) {
            throw new DiagnosedException(
                    Diagnostic.error(DiagnosticCode.NOT_XML, Place.FILE, "The file cannot be parsed as XML."));
        }
    }

    private static Diagnostic notWellFormed(SAXParseException e) {
        String message = SafeXml.sentence(e);
        return Diagnostic.error(
                DiagnosticCode.NOT_XML,
                Place.line(Math.max(0, e.getLineNumber()), Math.max(0, e.getColumnNumber())),
                "The file is not well-formed XML: " + message + (message.endsWith(".") ? "" : "."),
                "Maybe it was cut off; export it again.");
    }
}
