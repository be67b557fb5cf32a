package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.SchemaCheck;
import org.bellowscribe.musicxml.SchemaFinding;
import org.bellowscribe.score.Tune;

/**
 * Says what in a score that was read is against the MusicXML schema. Values that would change the music have refused it
 * before; what is left is a warning if it stands among what makes up the melody, and a note elsewhere.
 */
final class SchemaRemarks {

    private static final int MOST_SHOWN = 3;

    // The DTDs of older versions allow dates of any form and declare xlink themselves.
    private static final String FREE_DATE = "encoding-date";
    private static final String DECLARED_BY_DTD = "xlink:";

    private final List<Diagnostic> said;
    private final String melody;
    private final Map<String, List<SchemaFinding>> alike = new LinkedHashMap<>();

    private SchemaRemarks(List<Diagnostic> said, String melody) {
        this.said = said;
        this.melody = melody;
    }

    /**
     * Returns what to say of a score that was read.
     *
     * @param findings what in it is against the schema
     * @param tune what was read from it; what its remarks say already is not said again
     */
    static List<Diagnostic> of(List<SchemaFinding> findings, Tune tune) {
        return of(findings, new SchemaRemarks(tune.diagnostics(), tune.part()));
    }

    /**
     * Returns what to say of a score that was refused; all remarks are notes.
     *
     * @param findings what in it is against the schema
     * @param why why it was refused; what that says already is not said again
     */
    static List<Diagnostic> ofRefused(List<SchemaFinding> findings, List<Diagnostic> why) {
        return of(findings, new SchemaRemarks(why, "")).stream()
                .filter(remark -> remark.place().line() > 0)
                .toList();
    }

    private static List<Diagnostic> of(List<SchemaFinding> findings, SchemaRemarks remarks) {
        findings.forEach(remarks::add);
        return remarks.list();
    }

    private void add(SchemaFinding finding) {
        if (!finding.attribute().startsWith(DECLARED_BY_DTD)
                && !finding.element().equals(FREE_DATE)) {
            alike.computeIfAbsent(finding.element() + "@" + finding.attribute(), name -> new ArrayList<>())
                    .add(finding);
        }
    }

    private List<Diagnostic> list() {
        List<List<SchemaFinding>> left =
                alike.values().stream().filter(each -> !isSaid(each)).toList();
        List<Diagnostic> remarks = new ArrayList<>();
        left.stream().filter(this::matters).limit(MOST_SHOWN).forEach(each -> remarks.add(warning(each)));
        int shown = remarks.size();
        left.stream().filter(each -> !matters(each)).limit(MOST_SHOWN - shown).forEach(each -> remarks.add(note(each)));
        if (left.size() > remarks.size()) {
            int more = left.size() - remarks.size();
            remarks.add(Diagnostic.note(
                    DiagnosticCode.ODD_VALUE,
                    Place.FILE,
                    more == 1
                            ? "1 more sort of thing is against the MusicXML schema."
                            : "%d more sorts of things are against the MusicXML schema.".formatted(more)));
        }
        return remarks;
    }

    private boolean isSaid(List<SchemaFinding> findings) {
        return said.stream()
                .map(Diagnostic::place)
                .anyMatch(place -> findings.stream()
                        .map(SchemaFinding::place)
                        .anyMatch(found ->
                                place.line() > 0 && found.line() == place.line() && found.column() == place.column()));
    }

    private boolean matters(List<SchemaFinding> findings) {
        SchemaFinding first = findings.get(0);
        if (findings.stream().noneMatch(this::isInMelody)) {
            return false;
        }
        if (!first.attribute().isEmpty()) {
            return Vocabulary.keepsAttribute(first.element(), first.attribute());
        }
        // An element that MusicXML has may stand in the wrong order and is read all the same.
        return SchemaCheck.knows(first.element())
                ? Vocabulary.isMusic(first.element()) && !first.message().startsWith("Invalid content was found")
                : Vocabulary.isMusic(first.parent());
    }

    private boolean isInMelody(SchemaFinding finding) {
        return finding.place().measure() > 0 && finding.place().part().equals(melody);
    }

    private static Diagnostic warning(List<SchemaFinding> findings) {
        return Diagnostic.warning(
                DiagnosticCode.ODD_VALUE,
                findings.get(0).place(),
                sentence(findings),
                "Maybe look whether the melody is right there.");
    }

    private static Diagnostic note(List<SchemaFinding> findings) {
        return Diagnostic.note(DiagnosticCode.ODD_VALUE, findings.get(0).place(), sentence(findings));
    }

    private static String sentence(List<SchemaFinding> findings) {
        SchemaFinding first = findings.get(0);
        String what = first.attribute().isEmpty()
                ? "<%s>".formatted(first.element())
                : "The attribute %s of <%s>".formatted(first.attribute(), first.element());
        String count = findings.size() == 1 ? "" : " (%d times)".formatted(findings.size());
        return "%s is against the MusicXML schema%s: %s".formatted(what, count, why(first.message()));
    }

    /** Returns the validator's words without its list of all that would have been right. */
    private static String why(String message) {
        int list = message.indexOf(" One of '");
        String start = list < 0 ? message : message.substring(0, list);
        return start.endsWith(".") ? start : start + ".";
    }
}
