package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.Annotation.Symbol;
import org.bellowscribe.annotation.Annotation.Words;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

class SymbolMarksTest {

    private static final String NOTE = "<note><rest/><duration>8</duration><staff>1</staff></note>";

    /** Returns the measure's content with marks, after checking the laws that hold for every score. */
    private static String marked(String measure, Annotation... marks) throws DiagnosedException {
        ScoreDocument score = TinyScore.decode(TinyScore.of(measure));
        ScoreDocument marked = score.withMarks(List.of(marks));
        assertEquals(score.text(), marked.withoutMarks().text());
        assertEquals(marked.text(), marked.withMarks(List.of(marks)).text());
        assertEquals(List.of(), SchemaCheck.check(marked.text()));
        return TinyScore.measure(marked).replaceAll("\\n *", "");
    }

    private static Symbol symbol(Fraction offset, String root, Third third, String bass) {
        return new Symbol(0, offset, PitchClass.parse(root), third, PitchClass.parse(bass));
    }

    private static String attributes(int fifths, String more) {
        return "<attributes><divisions>4</divisions><key><fifths>" + fifths + "</fifths></key>" + more
                + "</attributes>";
    }

    @Test
    void aSymbolStandsBeforeTheWordsAndTheNote() throws DiagnosedException {
        assertEquals(
                "<harmony id=\"bellowscribe-h1\"><root><root-step>E</root-step></root><kind text=\"m\">minor</kind>"
                        + "<staff>1</staff></harmony><direction placement=\"above\" id=\"bellowscribe-w1\">"
                        + "<direction-type><words>push</words></direction-type><staff>1</staff></direction>" + NOTE,
                marked(NOTE, new Words(0, true, "push"), symbol(Fraction.ZERO, "E", Third.MINOR, "E")));
    }

    @Test
    void aCrossChordHasItsBassAndALaterOneItsOffset() throws DiagnosedException {
        String attributes = attributes(0, "");
        assertEquals(
                attributes
                        + "<harmony id=\"bellowscribe-h1\"><root><root-step>C</root-step></root>"
                        + "<kind text=\"\">major</kind><bass><bass-step>A</bass-step></bass><staff>1</staff></harmony>"
                        + "<harmony id=\"bellowscribe-h2\"><root><root-step>G</root-step></root>"
                        + "<kind text=\"5\">power</kind><offset>6</offset><staff>1</staff></harmony>" + NOTE,
                marked(
                        attributes + NOTE,
                        symbol(Fraction.of(3, 2), "G", Third.NONE, "G"),
                        symbol(Fraction.ZERO, "C", Third.MAJOR, "A")));
    }

    @Test
    void namesAreThoseOfTheKey() throws DiagnosedException {
        String flats = marked(attributes(-3, "") + NOTE, symbol(Fraction.ZERO, "G#", Third.MAJOR, "G#"));
        assertEquals(true, flats.contains("<root-step>A</root-step><root-alter>-1</root-alter>"), flats);
    }

    @Test
    void aTransposingPartHasThemAsItIsWritten() throws DiagnosedException {
        String transpose = "<transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose>";
        String moved = marked(attributes(3, transpose) + NOTE, symbol(Fraction.ZERO, "G", Third.MAJOR, "G"));
        assertEquals(true, moved.contains("<root-step>A</root-step></root>"), moved);
    }

    @Test
    void twoAtOneMomentAreTheCallersMistake() throws DiagnosedException {
        ScoreDocument score = TinyScore.decode(TinyScore.of(NOTE));
        Symbol symbol = symbol(Fraction.ZERO, "G", Third.MAJOR, "G");
        assertThrows(IllegalArgumentException.class, () -> score.withMarks(List.of(symbol, symbol)));
    }
}
