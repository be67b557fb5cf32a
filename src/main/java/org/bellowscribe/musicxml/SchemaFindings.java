package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.xml.sax.ErrorHandler;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Collects what a validator finds. A bad value, which it reports twice, becomes one finding. */
final class SchemaFindings implements ErrorHandler {

    /** Findings after which a score is not read further. */
    static final int MAX_FINDINGS = 200;

    private static final int LONGEST_MESSAGE = 500;

    /** Stops the parser; the reason is among the findings. */
    static final class Enough extends SAXException {
        private static final long serialVersionUID = 1L;
        private final transient List<SchemaFinding> findings;

        Enough(SchemaFindings findings) {
            this.findings = findings.list();
        }

        /** Returns what was found until then. */
        List<SchemaFinding> findings() {
            return findings;
        }
    }

    // The validator's rule, such as cvc-enumeration-valid, stands before its sentence.
    private static final Pattern RULE = Pattern.compile("(?s)((?:cvc|src|cos)-[A-Za-z0-9.-]+): (.*)");
    private static final Pattern SAYS_WHERE = Pattern.compile("cvc-attribute\\.3|cvc-type\\.3\\.1\\.3");
    private static final Pattern SAYS_WHY = Pattern.compile("cvc-[A-Za-z]+-valid(\\..*)?");
    private static final Pattern ATTRIBUTE = Pattern.compile(".*\\b[Aa]ttribute '([^']*)'", Pattern.DOTALL);

    private final SchemaPosition position;
    private final List<SchemaFinding> findings = new ArrayList<>();
    private @Nullable SchemaFinding why;

    SchemaFindings(SchemaPosition position) {
        this.position = position;
    }

    /** Returns what was found, in the order of the text. */
    List<SchemaFinding> list() {
        if (why != null) {
            findings.add(why);
            why = null;
        }
        return List.copyOf(findings);
    }

    /** Adds a finding of our own about the innermost open element. */
    void add(String attribute, String message) throws Enough {
        list();
        findings.add(finding(attribute, message));
        if (findings.size() >= MAX_FINDINGS) {
            throw new Enough(this);
        }
    }

    private SchemaFinding finding(String attribute, String message) {
        return new SchemaFinding(position.place(), position.element(), position.parent(), attribute, cut(message));
    }

    @Override
    public void warning(SAXParseException exception) {
        // Warnings of the parser are about DTDs, which do not matter here.
    }

    @Override
    public void error(SAXParseException exception) throws SAXException {
        Matcher rule = RULE.matcher(message(exception));
        if (!rule.matches()) {
            add("", message(exception));
            return;
        }
        String sentence = rule.group(2);
        SchemaFinding reason = why;
        if (SAYS_WHY.matcher(rule.group(1)).matches()) {
            list();
            why = finding("", sentence);
        } else if (SAYS_WHERE.matcher(rule.group(1)).matches() && reason != null) {
            why = null;
            add(attribute(sentence), reason.message());
        } else {
            add(attribute(sentence), sentence);
        }
    }

    @Override
    public void fatalError(SAXParseException exception) throws SAXException {
        add("", message(exception));
        throw new Enough(this);
    }

    private static String message(SAXParseException exception) {
        String message = exception.getMessage();
        return message == null ? exception.toString() : message;
    }

    private static String attribute(String sentence) {
        Matcher matcher = ATTRIBUTE.matcher(sentence);
        return matcher.find() ? matcher.group(1) : "";
    }

    private static String cut(String message) {
        return message.length() <= LONGEST_MESSAGE ? message : message.substring(0, LONGEST_MESSAGE) + "...";
    }
}
