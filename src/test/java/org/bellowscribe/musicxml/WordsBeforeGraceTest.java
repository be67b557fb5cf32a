package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.junit.jupiter.api.Test;

class WordsBeforeGraceTest {

    private static final String PITCH = "<pitch><step>D</step><octave>4</octave></pitch>";
    private static final String REST = "<note><rest/></note>\n";
    private static final String NOTE = "<note>" + PITCH + "<duration>1</duration></note>\n";
    private static final String GRACE = "<note><grace/>" + PITCH + "</note>\n";
    private static final String BEHIND = "<note><grace steal-time-previous=\"20\"/>" + PITCH + "</note>\n";

    private static ScoreDocument marked(int note, String... notes) throws DiagnosedException {
        ScoreDocument score = TinyScore.decode(TinyScore.of(String.join("", notes)));
        ScoreDocument marked = score.withMarks(List.of(new Annotation.Words(note, true, "air")));
        assertEquals(score.text(), marked.withoutMarks().text());
        return marked;
    }

    private static boolean isBelow(int note, String... notes) throws DiagnosedException {
        String text = marked(note, notes).text();
        assertEquals(List.of(), marked(note, notes).remarksOnShowing());
        boolean below = text.contains("<lyric number=\"1\" name=\"bellowscribe-words\">");
        assertEquals(!below, text.contains("<words>air</words>"));
        return below;
    }

    @Test
    void wordsOfANoteWhoseGraceNotesEndTheMeasureStandBelowIt() throws DiagnosedException {
        assertTrue(isBelow(1, NOTE, NOTE, GRACE, GRACE));
    }

    @Test
    void wordsOfANoteFromWhichGraceNotesTakeTimeStandBelowIt() throws DiagnosedException {
        assertTrue(isBelow(0, NOTE, BEHIND, NOTE));
    }

    @Test
    void wordsElsewhereStandAbove() throws DiagnosedException {
        assertEquals(false, isBelow(0, NOTE, NOTE, GRACE));
        assertEquals(false, isBelow(0, NOTE, GRACE, NOTE));
        assertEquals(false, isBelow(1, GRACE, NOTE));
        assertEquals(false, isBelow(2, NOTE, GRACE, NOTE));
    }

    @Test
    void theyAreReadAsWords() throws DiagnosedException {
        assertEquals(
                List.of(new Annotation.Words(0, false, "air")),
                marked(0, NOTE, GRACE).marks());
    }

    @Test
    void theirLineStandsBehindLinesThatBeginLater() throws DiagnosedException {
        ScoreDocument score = TinyScore.decode(TinyScore.of(NOTE + GRACE + "</measure><measure number=\"2\">" + NOTE));
        String text = score.withMarks(List.of(
                        new Annotation.Words(0, true, "air"),
                        new Annotation.Syllable(0, 0, "buttons", "5"),
                        new Annotation.Syllable(2, 1, "left-hand", "D")))
                .text();
        String first = text.substring(0, text.indexOf("<grace"));
        assertTrue(
                first.matches("(?s).*<text>5</text>.*number=\"2\" name=\"bellowscribe-left-hand\">.*<text>·</text>.*"
                        + "number=\"3\" name=\"bellowscribe-words\">.*<text>air</text>.*"),
                text);
    }

    @Test
    void wordsOfARestStayAndAreTold() throws DiagnosedException {
        List<Diagnostic> remarks = marked(1, NOTE, REST, GRACE, GRACE).remarksOnShowing();
        assertEquals(1, remarks.size());
        assertEquals(DiagnosticCode.WORDS, remarks.get(0).code());
        assertEquals(1, remarks.get(0).place().measure());
    }
}
