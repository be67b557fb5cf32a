package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.annotation.OwnPart;
import org.bellowscribe.annotation.PartMeasure;
import org.bellowscribe.annotation.PartNote;
import org.bellowscribe.annotation.PartWords;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.NoteName;
import org.junit.jupiter.api.Test;

class PartWriterTest {

    private static final TimeSignature TWO_FOUR = new TimeSignature(2, 4);
    private static final String NOTE = "<note><rest/><duration>2</duration></note>";
    private static final String LIST = "<part-list><score-part id=\"P1\"><part-name/></score-part></part-list>";
    private static final PartNote BASS = note(Fraction.ZERO, Fraction.of(1, 2), "G", new NoteName('G', 0, 2));
    private static final PartNote CHORD =
            note(Fraction.of(1, 1), Fraction.of(3, 4), "g", new NoteName('G', 0, 3), new NoteName('B', -1, 3));

    private static PartNote note(Fraction onset, Fraction duration, String label, NoteName... notes) {
        return new PartNote(onset, duration, List.of(notes), label, List.of());
    }

    private static PartMeasure measure(int index, Fraction length, PartNote... notes) {
        Measure measure = new Measure(index, "", length, Fraction.ZERO, TWO_FOUR, new Key(0, Mode.MAJOR));
        return new PartMeasure(measure, List.of(notes), List.of());
    }

    /** Returns the score with the part, after checking the laws that hold for every score. */
    private static String added(String text, PartMeasure... measures) throws DiagnosedException {
        ScoreDocument score = TinyScore.decode(text);
        OwnPart part = new OwnPart("P1", List.of(measures));
        ScoreDocument with = score.withMarks(List.of(), part);
        assertEquals(score.text(), with.withoutMarks().text());
        assertEquals(with.text(), with.withMarks(List.of(), part).text());
        if (score.kind() == ScoreKind.PARTWISE) {
            assertEquals(List.of(), SchemaCheck.check(with.text()));
        }
        return with.text();
    }

    private static String partwise(String... measures) {
        return "<score-partwise>" + LIST + "<part id=\"P1\">" + String.join("", measures) + "</part></score-partwise>";
    }

    @Test
    void notesAndRestsFillTheMeasure() throws DiagnosedException {
        String text = added(
                partwise("<measure number=\"1\">" + NOTE + "</measure>"), measure(0, Fraction.of(2, 1), BASS, CHORD));
        String lyric = "<lyric number=\"1\" name=\"bellowscribe-left-hand\"><syllabic>single</syllabic><text>";
        assertTrue(
                text.endsWith("<part id=\"bellowscribe-left-hand\"><measure number=\"1\"><attributes>"
                        + "<divisions>4</divisions><key><fifths>0</fifths></key>"
                        + "<time><beats>2</beats><beat-type>4</beat-type></time>"
                        + "<clef><sign>F</sign><line>4</line></clef></attributes>"
                        + "<note><pitch><step>G</step><octave>2</octave></pitch><duration>2</duration>"
                        + "<voice>1</voice><type>eighth</type>" + lyric + "G</text></lyric></note>"
                        + "<note><rest/><duration>2</duration><voice>1</voice><type>eighth</type></note>"
                        + "<note><pitch><step>G</step><octave>3</octave></pitch><duration>3</duration>"
                        + "<voice>1</voice><type>eighth</type><dot/>" + lyric + "g</text></lyric></note>"
                        + "<note><chord/><pitch><step>B</step><alter>-1</alter><octave>3</octave></pitch>"
                        + "<duration>3</duration><voice>1</voice><type>eighth</type><dot/>"
                        + "<accidental>flat</accidental></note>"
                        + "<note><rest/><duration>1</duration><voice>1</voice><type>16th</type></note>"
                        + "</measure></part></score-partwise>"),
                text);
    }

    @Test
    void numbersTimesAndRepeatsAreThoseOfTheMelody() throws DiagnosedException {
        String text = added(
                partwise(
                        "<measure number=\"0\" implicit=\"yes\" width=\"99\"><attributes><divisions>1</divisions>"
                                + "<time symbol=\"cut\" id=\"t\"><beats>2</beats><beat-type>4</beat-type></time>"
                                + "</attributes>" + NOTE + "</measure>",
                        "<measure number=\"1\"><barline location=\"left\" id=\"b\"><bar-style>heavy-light</bar-style>"
                                + "<repeat direction=\"forward\"/></barline>" + NOTE
                                + "<barline location=\"right\"><ending number=\"1\" type=\"stop\"/>"
                                + "<repeat direction=\"backward\"/></barline></measure>"),
                measure(0, Fraction.of(2, 1)),
                measure(1, Fraction.of(2, 1), BASS));
        String ours = text.substring(text.indexOf("<part id=\"bellowscribe"));
        assertTrue(ours.contains("<measure number=\"0\" implicit=\"yes\">"), ours);
        assertTrue(ours.contains("<time symbol=\"cut\"><beats>2</beats>"), ours);
        assertTrue(
                ours.contains("<note><rest measure=\"yes\"/><duration>4</duration><voice>1</voice></note></measure>"),
                ours);
        assertTrue(
                ours.contains("<measure number=\"1\"><barline location=\"left\"><bar-style>heavy-light</bar-style>"
                        + "<repeat direction=\"forward\"/></barline><note>"),
                ours);
        assertTrue(
                ours.contains("<barline location=\"right\"><ending number=\"1\" type=\"stop\"/>"
                        + "<repeat direction=\"backward\"/></barline></measure></part>"),
                ours);
    }

    @Test
    void aTimewiseScoreHasThePartInEveryMeasure() throws DiagnosedException {
        String text = added(
                "<score-timewise>" + LIST + "<measure number=\"1\">\n  <part id=\"P1\">" + NOTE + "</part>\n"
                        + "  <part id=\"P2\">" + NOTE + "</part>\n</measure>"
                        + "<measure number=\"2\"><part id=\"P1\">" + NOTE + "</part></measure></score-timewise>",
                measure(0, Fraction.of(2, 1), BASS),
                measure(1, Fraction.of(2, 1)));
        assertTrue(text.contains("</part>\n  <part id=\"bellowscribe-left-hand\"><attributes>"), text);
        assertTrue(
                text.endsWith("</part><part id=\"bellowscribe-left-hand\"><note><rest measure=\"yes\"/>"
                        + "<duration>4</duration><voice>1</voice></note></part></measure></score-timewise>"),
                text);
    }

    @Test
    void thePartStandsBehindGroupsOfParts() throws DiagnosedException {
        String group = "<part-group number=\"1\" type=\"start\"/>";
        String stop = "<part-group number=\"1\" type=\"stop\"/>";
        String text = added(
                partwise("<measure number=\"1\">" + NOTE + "</measure>")
                        .replace("<score-part id", group + "<score-part id")
                        .replace("</part-list>", stop + "</part-list>"),
                measure(0, Fraction.of(2, 1), BASS));
        assertTrue(text.contains(stop + "<score-part id=\"bellowscribe-left-hand\"><part-name>Left hand"), text);
    }

    @Test
    void aSheetOfItsOwnHasTheSignsOfTheOrderOfPlay() throws DiagnosedException {
        String jump = "<direction><direction-type><words>D.C. al Fine</words></direction-type>"
                + "<sound dacapo=\"yes\"/></direction>";
        String text = partwise("<measure number=\"1\"><direction><direction-type><segno/></direction-type></direction>"
                + "<direction><direction-type><words>softly</words></direction-type></direction>" + NOTE + jump
                + "</measure>");
        PartMeasure plain = measure(0, Fraction.of(2, 1), BASS);
        PartMeasure words =
                new PartMeasure(plain.measure(), plain.notes(), List.of(new PartWords(Fraction.of(3, 2), "pull")));
        String sheet = OwnScore.write(TinyScore.decode(text), new OwnPart("P1", List.of(words)), "Two & two")
                .text();
        assertEquals(List.of(), SchemaCheck.check(sheet));
        assertTrue(sheet.contains("<work-title>Two &amp; two</work-title>"), sheet);
        assertTrue(sheet.contains("<segno/></direction-type></direction><note>"), sheet);
        assertTrue(sheet.contains(jump + "</measure>"), sheet);
        assertTrue(
                sheet.contains("<type>eighth</type></note><direction placement=\"above\"><direction-type>"
                        + "<words>pull</words></direction-type><voice>1</voice></direction><note><rest/>"),
                sheet);
        assertTrue(!sheet.contains("softly") && !sheet.contains("bellowscribe"), sheet);
    }
}
