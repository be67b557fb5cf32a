package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;

/** Transposed scores, letter by letter. */
class ScoreTransposerTest {

    @Test
    void stepAlterAndOctaveAreWrittenOver() throws DiagnosedException {
        assertEquals(
                "<pitch><step>C</step><alter>1</alter><octave>5</octave></pitch>\n",
                moved(7, "<pitch><step>F</step><alter>1</alter><octave>4</octave></pitch>"));
    }

    @Test
    void alterIsPutInBehindTheStep() throws DiagnosedException {
        assertEquals(
                "<pitch>\n  <step>F</step>\n  <alter>1</alter>\n  <octave>4</octave>\n</pitch>\n",
                moved(2, "<pitch>\n  <step>E</step>\n  <octave>4</octave>\n</pitch>"));
    }

    @Test
    void alterThatIsNothingIsTakenOut() throws DiagnosedException {
        assertEquals(
                "<pitch>\n  <step>G</step>\n  <octave>4</octave>\n</pitch>\n",
                moved(1, "<pitch>\n  <step>F</step>\n  <alter>1</alter>\n  <octave>4</octave>\n</pitch>"));
    }

    @Test
    void quarterToneStaysOne() throws DiagnosedException {
        assertEquals(
                "<pitch><step>G</step><alter>0.5</alter><octave>4</octave></pitch>"
                        + "<accidental>quarter-sharp</accidental>\n",
                moved(
                        1,
                        "<pitch><step>F</step><alter>1.5</alter><octave>4</octave></pitch>"
                                + "<accidental>three-quarters-sharp</accidental>"));
    }

    @Test
    void accidentalFollowsItsNote() throws DiagnosedException {
        assertEquals(
                "<pitch><step>B</step><alter>-1</alter><octave>4</octave></pitch><accidental>flat</accidental>\n",
                moved(5, "<pitch><step>F</step><octave>4</octave></pitch><accidental>natural</accidental>"));
    }

    @Test
    void accidentalOfAnOrnamentFollowsTheNeighborNote() throws DiagnosedException {
        String ornament = "<notations><ornaments><trill-mark/><accidental-mark placement=\"above\">%s</accidental-mark>"
                + "</ornaments></notations>\n";
        assertEquals(
                "<pitch><step>C</step><octave>5</octave></pitch>" + ornament.formatted("sharp"),
                moved(
                        5,
                        "<pitch><step>G</step><octave>4</octave></pitch>"
                                + ornament.formatted("sharp").strip()));
        assertEquals(
                "<pitch><step>E</step><octave>4</octave></pitch>" + ornament.formatted("natural"),
                moved(
                        4,
                        "<pitch><step>C</step><octave>4</octave></pitch>"
                                + ornament.formatted("flat").strip()));
    }

    @Test
    void keyAndCanceledKeyMove() throws DiagnosedException {
        assertEquals(
                "<attributes><key><cancel>2</cancel><fifths>3</fifths><mode>major</mode></key></attributes>\n",
                transposed(
                        2,
                        "<attributes><key><cancel>0</cancel><fifths>1</fifths><mode>major</mode></key></attributes>"));
    }

    @Test
    void keyOfSingleAccidentalsMoves() throws DiagnosedException {
        assertEquals(
                "<attributes><key><key-step>C</key-step><key-alter>1</key-alter></key></attributes>\n",
                transposed(7, "<attributes><key><key-step>F</key-step><key-alter>1</key-alter></key></attributes>"));
    }

    @Test
    void chordSymbolMovesWithItsBass() throws DiagnosedException {
        assertEquals(
                "<harmony><root><root-step>E</root-step></root><kind>major</kind>"
                        + "<bass><bass-step>G</bass-step><bass-alter>1</bass-alter></bass></harmony>\n",
                moved(
                        2,
                        "<harmony><root><root-step>D</root-step></root><kind>major</kind>"
                                + "<bass><bass-step>F</bass-step><bass-alter>1</bass-alter></bass></harmony>"));
    }

    @Test
    void scoreWithoutKeyGetsOneBehindTheDivisions() throws DiagnosedException {
        assertEquals(
                "<attributes>\n  <divisions>1</divisions>\n  <key><fifths>2</fifths></key>\n</attributes>\n",
                transposed(2, "<attributes>\n  <divisions>1</divisions>\n</attributes>"));
    }

    @Test
    void scoreWithoutAttributesGetsThemAtTheStart() throws DiagnosedException {
        String score = TinyScore.decode(TinyScore.of("<note><rest/><duration>1</duration></note>"))
                .transposed(-2)
                .text();
        assertTrue(score.contains("<measure number=\"1\"><attributes><key><fifths>-2</fifths></key></attributes>"));
    }

    @Test
    void partOfATransposingInstrumentStaysOne() throws DiagnosedException {
        String transpose = "<transpose><diatonic>-1</diatonic><chromatic>-2</chromatic></transpose></attributes>";
        assertEquals(
                "<attributes><key><fifths>5</fifths></key>" + transpose + "\n",
                transposed(2, "<attributes><key><fifths>3</fifths></key>" + transpose));
    }

    @Test
    void drumsStayWhereTheyAre() throws DiagnosedException {
        String drums = "<attributes><clef><sign>percussion</sign></clef></attributes>"
                + "<note><pitch><step>E</step><octave>4</octave></pitch><duration>1</duration></note>";
        assertEquals(drums + "\n", transposed(2, drums));
    }

    @Test
    void upAndDownAgainIsTheSameText() throws DiagnosedException {
        ScoreDocument score = TinyScore.decode(TinyScore.of("""
                <attributes><key><fifths>1</fifths></key></attributes>
                <note>
                  <pitch>
                    <step>C</step>
                    <alter>1</alter>
                    <octave>5</octave>
                  </pitch>
                  <duration>1</duration>
                  <accidental>sharp</accidental>
                </note>"""));
        assertEquals(score.text(), score.transposed(3).transposed(-3).text());
        assertFalse(score.text().equals(score.transposed(3).text()));
    }

    @Test
    void noteBeyondTheOctavesIsRefused() {
        DiagnosedException thrown = assertThrows(
                DiagnosedException.class, () -> moved(-12, "<pitch><step>C</step><octave>0</octave></pitch>"));
        assertEquals(
                "The note C0 cannot be moved to C-1: MusicXML has the octaves 0 to 9.",
                thrown.diagnostics().get(0).text());
    }

    @Test
    void marksAreNotTransposedButGone() throws DiagnosedException {
        ScoreDocument bare = TinyScore.decode(TinyScore.of("<attributes><key><fifths>0</fifths></key></attributes>"
                + "<note><pitch><step>C</step><octave>4</octave></pitch><duration>1</duration></note>"));
        ScoreDocument marked = bare.withMarks(SampleMarks.on(bare));
        assertEquals(
                marked.withoutMarks().transposed(2).text(), marked.transposed(2).text());
    }

    /** Returns a note or chord symbol moved, in a score that has a signature. */
    private static String moved(int semitones, String content) throws DiagnosedException {
        String key = "<attributes><key><fifths>0</fifths></key></attributes>\n";
        String all = transposed(semitones, key + content);
        return all.substring(all.indexOf('\n') + 1);
    }

    private static String transposed(int semitones, String content) throws DiagnosedException {
        byte[] score = TinyScore.of(content).getBytes(StandardCharsets.UTF_8);
        return TinyScore.measure(ScoreDocument.decode(score).transposed(semitones));
    }
}
