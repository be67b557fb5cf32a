package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.Annotation.Finger;
import org.bellowscribe.annotation.Annotation.Syllable;
import org.bellowscribe.annotation.Annotation.Words;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;

class MarksTest {

    private static final String PLAIN = """
            <note>
              <rest/>
              <duration>1</duration>
            </note>
            """;

    /** Returns the measure's content with marks, after checking the laws that hold for every score. */
    private static String marked(String measure, Annotation... marks) throws DiagnosedException {
        ScoreDocument score = TinyScore.decode(TinyScore.of(measure));
        ScoreDocument marked = score.withMarks(List.of(marks));
        assertEquals(score.text(), marked.withoutMarks().text());
        assertEquals(marked.text(), marked.withMarks(List.of(marks)).text());
        assertEquals(List.of(), SchemaCheck.check(marked.text()));
        return TinyScore.measure(marked);
    }

    @Test
    void aSyllableStandsLikeItsNeighbor() throws DiagnosedException {
        assertEquals("""
                <note>
                  <rest/>
                  <duration>1</duration>
                  <lyric number="1" name="bellowscribe-buttons"><syllabic>single</syllabic><text>5</text></lyric>
                </note>
                """, marked(PLAIN, new Syllable(0, 0, "buttons", "5")));
    }

    @Test
    void linesAscendFromTheLastLineOfTheScore() throws DiagnosedException {
        String sung = PLAIN.replace("</note>", "  <lyric number=\"3\"><text>la</text></lyric>\n</note>");
        assertEquals("""
                <note>
                  <rest/>
                  <duration>1</duration>
                  <lyric number="3"><text>la</text></lyric>
                  <lyric number="4" name="bellowscribe-a"><syllabic>single</syllabic><text>x</text></lyric>
                  <lyric number="5" name="bellowscribe-b"><syllabic>single</syllabic><text>y</text></lyric>
                </note>
                """, marked(sung, new Syllable(0, 1, "b", "y"), new Syllable(0, 0, "a", "x")));
    }

    @Test
    void aSyllableStandsBeforePlayAndItsComment() throws DiagnosedException {
        String played = """
                <note>
                  <rest/>
                  <duration>1</duration>
                  <!-- muted -->
                  <play><mute>on</mute></play>
                </note>
                """;
        assertEquals("""
                <note>
                  <rest/>
                  <duration>1</duration>
                  <lyric number="1" name="bellowscribe-a"><syllabic>single</syllabic><text>5</text></lyric>
                  <!-- muted -->
                  <play><mute>on</mute></play>
                </note>
                """, marked(played, new Syllable(0, 0, "a", "5")));
    }

    @Test
    void wordsStandBeforeTheNoteInItsVoiceAndStaff() throws DiagnosedException {
        String note = """
                <note>
                  <rest/>
                  <duration>1</duration>
                  <voice>2</voice>
                  <staff>1</staff>
                </note>
                """;
        assertEquals(
                """
                <!-- first -->
                <direction placement="above" id="bellowscribe-w1"><direction-type><words>push</words></direction-type>\
                <voice>2</voice><staff>1</staff></direction>
                <direction placement="below" id="bellowscribe-w2"><direction-type><words>air</words></direction-type>\
                <voice>2</voice><staff>1</staff></direction>
                """ + note, marked("<!-- first -->\n" + note, new Words(0, false, "air"), new Words(0, true, "push")));
    }

    @Test
    void wordsAreNumberedInTheOrderOfTheScore() throws DiagnosedException {
        String text = marked(PLAIN + PLAIN, new Words(1, true, "pull"), new Words(0, true, "push"));
        assertEquals(true, text.matches("(?s).*-w1\".*>push<.*-w2\".*>pull<.*"), text);
    }

    @Test
    void aFingerStandsInTheNotationsThatTheNoteHas() throws DiagnosedException {
        String note = """
                <note>
                  <rest/>
                  <duration>1</duration>
                  <notations>
                    <tied type="start"/>
                    <technical><up-bow/></technical>
                    <!-- held -->
                  </notations>
                  <notations><fermata/></notations>
                  <lyric number="1"><text>la</text></lyric>
                </note>
                """;
        String finger = "    <technical id=\"bellowscribe-f1\"><fingering>3</fingering></technical>\n";
        assertEquals(note.replace("    <!-- held", finger + "    <!-- held"), marked(note, new Finger(0, 3)));
    }

    @Test
    void notationsThatHoldNothingYetTakeTheFingerToo() throws DiagnosedException {
        String note = "<note><rest/><duration>1</duration><notations>%s</notations></note>\n";
        String finger = "<technical id=\"bellowscribe-f1\"><fingering>3</fingering></technical>";
        assertEquals(note.formatted(finger), marked(note.formatted(""), new Finger(0, 3)));
    }

    @Test
    void aFingerOfANoteWithoutNotationsBringsItsOwnBeforeTheLyrics() throws DiagnosedException {
        String note = """
                <note>
                  <rest/>
                  <duration>1</duration>
                  <lyric number="1"><text>la</text></lyric>
                </note>
                """;
        String notations =
                "  <notations id=\"bellowscribe-f1\"><technical><fingering>3</fingering></technical></notations>\n";
        assertEquals(note.replace("  <lyric", notations + "  <lyric"), marked(note, new Finger(0, 3)));
        String empty = note.replace("  <lyric", "  <notations/>\n  <lyric");
        assertEquals(empty.replace("  <lyric", notations + "  <lyric"), marked(empty, new Finger(0, 3)));
    }

    @Test
    void aScoreOnOneLineStaysOnOneLine() throws DiagnosedException {
        String line = "<note><rest/><duration>1</duration></note>";
        assertEquals(
                "<note><rest/><duration>1</duration><lyric number=\"1\" name=\"bellowscribe-a\">"
                        + "<syllabic>single</syllabic><text>5</text></lyric></note>\n",
                marked(line, new Syllable(0, 0, "a", "5")));
    }

    @Test
    void textIsEscaped() throws DiagnosedException {
        String text = marked(PLAIN, new Words(0, true, "<a> & \"b\" ]]>"));
        assertEquals(true, text.contains("<words>&lt;a&gt; &amp; &quot;b&quot; ]]&gt;</words>"), text);
    }

    @Test
    void anIdThatTheScoreUsesIsNotGivenAgain() throws DiagnosedException {
        String note = PLAIN.replace("<note>", "<note id=\"bellowscribe-w1\">");
        String text = marked(note, new Words(0, true, "push"));
        assertEquals(true, text.contains("<direction placement=\"above\" id=\"bellowscribe-w2\">"), text);
    }

    @Test
    void aNoteOfATimewiseScoreIsMarked() throws DiagnosedException {
        ScoreDocument score = TinyScore.decode("<score-timewise><measure number='1'><part id='P1'><note><rest/></note>"
                + "</part></measure></score-timewise>");
        assertEquals(ScoreKind.TIMEWISE, score.kind());
        assertEquals(1, score.noteCount());
        assertEquals(
                "<score-timewise><measure number='1'><part id='P1'><note><rest/><notations id=\"bellowscribe-f1\">"
                        + "<technical><fingering>1</fingering></technical></notations></note></part></measure>"
                        + "</score-timewise>",
                score.withMarks(List.of(new Finger(0, 1))).text());
    }

    @Test
    void marksThatCannotStandAreTheCallersMistake() throws DiagnosedException {
        ScoreDocument score = TinyScore.decode(TinyScore.of(PLAIN + "<note/>"));
        for (List<Annotation> marks : List.<List<Annotation>>of(
                List.of(new Words(2, true, "push")),
                List.of(new Words(-1, true, "push")),
                List.of(new Words(0, true, "")),
                List.of(new Words(0, true, "\u0007")),
                List.of(new Words(0, true, "\ud800")),
                List.of(new Words(0, true, "a"), new Words(0, true, "b")),
                List.of(new Finger(0, 6)),
                List.of(new Finger(0, 1), new Finger(0, 2)),
                List.of(new Finger(1, 1)),
                List.of(new Syllable(0, 0, "a", "")),
                List.of(new Syllable(0, 0, "a", "1"), new Syllable(0, 0, "a", "2")),
                List.of(new Syllable(0, 0, "a", "1"), new Syllable(1, 0, "b", "2")),
                List.of(new Syllable(1, 0, "a", "1")))) {
            assertThrows(IllegalArgumentException.class, () -> score.withMarks(marks), marks::toString);
        }
    }
}
