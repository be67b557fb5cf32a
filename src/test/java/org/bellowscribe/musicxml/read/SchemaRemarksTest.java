package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.ScoreText.note;
import static org.bellowscribe.musicxml.read.ScoreText.notes;
import static org.bellowscribe.musicxml.read.ScoreText.part;
import static org.bellowscribe.musicxml.read.ScoreText.read;
import static org.bellowscribe.musicxml.read.ScoreText.readChecked;
import static org.bellowscribe.musicxml.read.ScoreText.score;
import static org.bellowscribe.musicxml.read.ScoreText.wrap;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.Severity;
import org.bellowscribe.musicxml.SchemaCheck;
import org.bellowscribe.score.Tune;
import org.junit.jupiter.api.Test;

class SchemaRemarksTest {

    private static final String NOTE = notes("D5:16");

    private static List<Diagnostic> remarks(String text) {
        return readChecked(text).schemaRemarks();
    }

    private static Diagnostic only(String text) {
        List<Diagnostic> remarks = remarks(text);
        assertEquals(1, remarks.size(), remarks::toString);
        return remarks.get(0);
    }

    @Test
    void validScoreHasNone() {
        assertEquals(List.of(), remarks(score(NOTE)));
    }

    @Test
    void oddLayoutIsANoteWithItsPlace() {
        Diagnostic note = only(score(NOTE.replace("<note>", "<note default-x=\"12px\">")));
        assertEquals(Severity.NOTE, note.severity());
        assertEquals(1, note.place().measure());
        assertEquals(4, note.place().line());
        assertEquals(
                "The attribute default-x of <note> is against the MusicXML schema:"
                        + " '12px' is not a valid value for 'decimal'.",
                note.text());
    }

    @Test
    void likeThingsAreCounted() {
        String odd = notes("D5:4").replace("<note>", "<note default-x=\"?\">").repeat(4);
        assertEquals(
                "The attribute default-x of <note> is against the MusicXML schema (4 times):"
                        + " '?' is not a valid value for 'decimal'.",
                only(score(odd)).text());
    }

    @Test
    void elementThatMusicXmlLacksIsAWarningInsideANote() {
        Diagnostic warning = only(score(NOTE.replace("<note>", "<note><chrod/>")));
        assertEquals(Severity.WARNING, warning.severity());
        assertEquals(
                "<chrod> is against the MusicXML schema: Invalid content was found starting with element 'chrod'.",
                warning.text());
    }

    @Test
    void sameInAnotherPartIsANote() {
        String other = part("P2", ScoreText.ATTRIBUTES + NOTE.replace("<note>", "<note><chrod/>"));
        List<Diagnostic> remarks = remarks(wrap(
                "<part-list><score-part id=\"P1\"><part-name/></score-part><score-part id=\"P2\"><part-name/></score-part></part-list>"
                        + part("P1", ScoreText.ATTRIBUTES + NOTE) + other));
        assertEquals(
                List.of(Severity.NOTE),
                remarks.stream().map(Diagnostic::severity).toList());
    }

    @Test
    void knownElementInTheWrongOrderIsANote() {
        String lyricFirst = note("D5:16", "<lyric><text>la</text></lyric><stem>up</stem>");
        assertEquals(Severity.NOTE, only(score(lyricFirst)).severity());
    }

    @Test
    void whatTheReaderSaidIsNotSaidAgain() {
        String text = score(NOTE + "<barline><repeat direction=\"backwards\"/></barline>");
        Tune tune = read(text);
        assertEquals(
                1,
                tune.diagnostics().stream()
                        .filter(each -> each.text().contains("backwards"))
                        .count());
        assertEquals(List.of(), remarks(text));
    }

    @Test
    void manySortsEndInACount() {
        String odd = NOTE.replace("<note>", "<note default-x=\"?\" default-y=\"?\" color=\"red\" font-size=\"?\">");
        List<Diagnostic> remarks = remarks(score(odd));
        assertEquals(4, remarks.size());
        assertEquals(
                "1 more sort of thing is against the MusicXML schema.",
                remarks.get(3).text());
    }

    @Test
    void whatOlderVersionsAllowedIsNoFault() {
        String old = score(NOTE)
                .replace("version=\"4.0\"", "version=\"2.0\"")
                .replace(
                        "<part-list>",
                        "<identification><encoding><encoding-date>13.2.2005</encoding-date></encoding></identification>"
                                + "<credit><link xlink:href=\"a.pdf\"/><credit-words>A</credit-words></credit><part-list>");
        assertEquals(List.of(), remarks(old));
    }

    @Test
    void refusedTuneIsToldWhereInTheFile() {
        String text = score(NOTE.replace("<duration>16</duration>", ""));
        List<Diagnostic> why = List.of(ScoreText.refusal(text));
        List<Diagnostic> remarks = SchemaRemarks.ofRefused(SchemaCheck.check(text), why);
        assertEquals(1, remarks.size(), remarks::toString);
        assertEquals(4, remarks.get(0).place().line());
        assertEquals(Severity.NOTE, remarks.get(0).severity());
    }
}
