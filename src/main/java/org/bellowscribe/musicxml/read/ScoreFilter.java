package org.bellowscribe.musicxml.read;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.AttributesImpl;
import org.xml.sax.helpers.DefaultHandler;

/** Cuts a score down to its music while it is parsed, and turns a timewise score into a partwise one. */
final class ScoreFilter extends DefaultHandler {

    private static final int MAX_DEPTH = 1_000;
    private static final int MAX_PARTS = 500;
    /** A full orchestra plays fewer in an evening. */
    private static final int MAX_NOTES = 200_000;
    /** Letters of a text that are read; no value and no title needs more. */
    private static final int MAX_TEXT = 1_000;

    private final LeanPieces pieces = new LeanPieces();
    private final Map<String, OddValue> bad = new HashMap<>();
    private final Map<String, OddValue> odd = new LinkedHashMap<>();
    // The kept elements we are in, innermost first, with the names they would have in a partwise score.
    private final Deque<String> path = new ArrayDeque<>();
    private final StringBuilder text = new StringBuilder();
    private AttributesImpl textAttributes = new AttributesImpl();
    private @Nullable Locator locator;
    private boolean timewise;
    private int dropped;
    private int depth;
    private int notes;
    private int harmonies;
    private int part = -1;
    private String partId = "";
    private int measure = -1;
    private String measureNumber = "";
    private @Nullable String owner;

    /** Stops the parsing of a document that is of no use. */
    static final class Refusal extends SAXException {
        private final transient Diagnostic diagnostic;

        Refusal(Diagnostic diagnostic) {
            super(diagnostic.text());
            this.diagnostic = diagnostic;
        }

        Diagnostic diagnostic() {
            return diagnostic;
        }
    }

    /** Returns the result, after parsing. */
    LeanScore finish() {
        return new LeanScore(pieces, pieces.partIds(), bad, List.copyOf(odd.values()));
    }

    @Override
    public void setDocumentLocator(Locator locator) {
        this.locator = locator;
    }

    @Override
    public void startElement(String uri, String localName, String name, Attributes attributes) throws SAXException {
        if (++depth > MAX_DEPTH) {
            throw new Refusal(Diagnostic.error(
                    DiagnosticCode.NOT_MUSICXML,
                    place(),
                    "The elements are nested more than %d deep.".formatted(MAX_DEPTH)));
        }
        if (path.isEmpty() && dropped == 0) {
            startRoot(name);
            return;
        }
        String role = role(name);
        if (dropped > 0 || !Vocabulary.keeps(path.peek(), role)) {
            dropped++;
            return;
        }
        path.push(role);
        switch (role) {
            case "part" -> startPart(attributes);
            case "measure" -> startMeasure(attributes);
            default -> startOther(role, attributes);
        }
    }

    private void startRoot(String name) throws Refusal {
        timewise = name.equals("score-timewise");
        if (!timewise && !name.equals("score-partwise")) {
            throw new Refusal(Diagnostic.error(
                    DiagnosticCode.NOT_MUSICXML,
                    place(),
                    "The root element is <%s>; a score has <score-partwise> or <score-timewise>."
                            .formatted(name.length() > 60 ? name.substring(0, 60) + "..." : name),
                    name.equals("opus")
                            ? "Maybe give the scores that this opus lists."
                            : "Maybe export the tune as MusicXML."));
        }
        path.push("score-partwise");
    }

    /** Swaps the names of parts and measures in a timewise score. */
    private String role(String name) {
        if (!timewise) {
            return name;
        }
        return switch (name) {
            case "measure" -> "part";
            case "part" -> "measure";
            default -> name;
        };
    }

    private void startPart(Attributes attributes) {
        if (timewise) {
            measure++;
            measureNumber = value(attributes, "number");
        } else {
            partId = value(attributes, "id");
            part = pieces.newPart(partId);
            measure = -1;
        }
    }

    private void startMeasure(Attributes attributes) throws Refusal {
        if (timewise) {
            partId = value(attributes, "id");
            part = pieces.part(partId);
        } else {
            measure++;
            measureNumber = value(attributes, "number");
        }
        if (part >= MAX_PARTS) {
            throw new Refusal(Diagnostic.error(
                    DiagnosticCode.NOT_MUSICXML, place(), "The score has more than %d parts.".formatted(MAX_PARTS)));
        }
        pieces.startMeasure(part, measure, measureNumber);
    }

    private void startOther(String name, Attributes attributes) throws Refusal {
        if (Vocabulary.isText(name)) {
            text.setLength(0);
            textAttributes = kept(name, attributes);
            return;
        }
        AttributesImpl kept = kept(name, attributes);
        if (name.equals("note")) {
            requireFew(notes + 1);
            own(LeanScore.noteId(notes++), kept);
        } else if (name.equals("harmony")) {
            own(LeanScore.harmonyId(harmonies++), kept);
        }
        pieces.startTag(name, kept);
    }

    private void requireFew(int count) throws Refusal {
        if (count > MAX_NOTES) {
            throw new Refusal(Diagnostic.error(
                    DiagnosticCode.NOT_MUSICXML,
                    place(),
                    "The score has more than %d notes and rests.".formatted(MAX_NOTES),
                    "Maybe give the tune by itself."));
        }
    }

    private void own(String id, AttributesImpl attributes) {
        owner = id;
        LeanPieces.add(attributes, "id", id);
    }

    private AttributesImpl kept(String name, Attributes attributes) {
        AttributesImpl kept = new AttributesImpl();
        for (int i = 0; i < attributes.getLength(); i++) {
            String attribute = attributes.getQName(i);
            if (Vocabulary.keepsAttribute(name, attribute)) {
                String value = attributes.getValue(i).strip();
                String full = name + "@" + attribute;
                if (value.length() <= MAX_TEXT && Vocabulary.isValid(full, value)) {
                    LeanPieces.add(kept, attribute, value);
                } else {
                    odd.putIfAbsent(full, new OddValue(full, value, place()));
                }
            }
        }
        return kept;
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        if (dropped == 0 && !path.isEmpty() && Vocabulary.isText(path.getFirst())) {
            text.append(characters, start, Math.min(length, MAX_TEXT - text.length()));
        }
    }

    /** Says that a reference to a letter by name is lost: nothing in the file declares it. */
    @Override
    public void skippedEntity(String name) {
        if (dropped == 0 && !path.isEmpty() && Vocabulary.isText(path.getFirst())) {
            odd.putIfAbsent("&" + name, new OddValue(path.getFirst(), "&" + name + ";", place()));
        }
    }

    @Override
    public void endElement(String uri, String localName, String name) {
        depth--;
        if (dropped > 0) {
            dropped--;
            return;
        }
        String role = path.pop();
        if (Vocabulary.isText(role)) {
            writeText(role);
        } else if (role.equals("measure")) {
            pieces.endMeasure();
        } else if (!role.equals("part") && !path.isEmpty()) {
            pieces.endTag(role);
            owner = role.equals("note") || role.equals("harmony") ? null : owner;
        }
    }

    private void writeText(String name) {
        String value = text.toString().strip();
        if (Vocabulary.isValid(name, value)) {
            pieces.startTag(name, textAttributes);
            pieces.text(value);
            pieces.endTag(name);
        } else if (Vocabulary.isVital(name)) {
            bad.putIfAbsent(owner == null ? LeanScore.partId(part) : owner, new OddValue(name, value, place()));
        } else {
            odd.putIfAbsent(name, new OddValue(name, value, place()));
        }
    }

    private Place place() {
        int line = locator == null ? 0 : Math.max(0, locator.getLineNumber());
        int column = locator == null ? 0 : Math.max(0, locator.getColumnNumber());
        return new Place(measure + 1, measureNumber, partId, line, column);
    }

    private static String value(Attributes attributes, String name) {
        String value = attributes.getValue(name);
        return value == null ? "" : value.strip();
    }
}
