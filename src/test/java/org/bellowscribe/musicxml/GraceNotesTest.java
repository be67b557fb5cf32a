package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.annotation.Annotation.Finger;
import org.bellowscribe.annotation.Annotation.Syllable;
import org.bellowscribe.annotation.Annotation.Words;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;

class GraceNotesTest {

    private static final String PITCH = "<pitch><step>D</step><octave>5</octave></pitch>";
    private static final String GRACE = "<note><grace/>" + PITCH + "<voice>1</voice></note>";
    private static final String NOTE = "<note>" + PITCH + "<duration>1</duration><voice>1</voice></note>";
    private static final String FILLER =
            "<lyric number=\"1\" name=\"bellowscribe-buttons\">" + "<syllabic>single</syllabic><text></text></lyric>";

    private static int fillers(String notes, int marked) throws DiagnosedException {
        ScoreDocument score = TinyScore.decode(TinyScore.of(notes));
        ScoreDocument with = score.withMarks(List.of(new Syllable(marked, 0, "buttons", "5")));
        assertEquals(score.text(), with.withoutMarks().text());
        return with.text().split(FILLER, -1).length - 1;
    }

    @Test
    void eachGraceNoteHasAnEmptySyllable() throws DiagnosedException {
        assertEquals(2, fillers(GRACE + NOTE + GRACE + NOTE, 1));
    }

    @Test
    void theSecondNoteOfAGraceChordHasNone() throws DiagnosedException {
        assertEquals(1, fillers(GRACE + GRACE.replace("<grace/>", "<grace/><chord/>") + NOTE, 2));
    }

    @Test
    void graceNotesOfAnotherVoiceHaveNone() throws DiagnosedException {
        assertEquals(0, fillers(GRACE.replace("<voice>1", "<voice>2") + NOTE, 1));
    }

    @Test
    void marksThatAreNoSyllablesNeedNone() throws DiagnosedException {
        ScoreDocument score = TinyScore.decode(TinyScore.of(GRACE + NOTE));
        assertFalse(score.withMarks(List.of(new Finger(1, 3))).text().contains("<lyric"));
    }

    @Test
    void eachLineIsFilled() throws DiagnosedException {
        ScoreDocument score = TinyScore.decode(TinyScore.of(GRACE + NOTE));
        String text = score.withMarks(List.of(new Syllable(1, 0, "buttons", "5"), new Syllable(1, 1, "left-hand", "D")))
                .text();
        assertTrue(text.contains("<text></text></lyric><lyric number=\"2\" name=\"bellowscribe-left-hand\">"), text);
    }

    private static String withWords(String notes, int marked) throws DiagnosedException {
        ScoreDocument score = TinyScore.decode(TinyScore.of(notes));
        ScoreDocument with =
                score.withMarks(List.of(new Words(marked, true, "air"), new Syllable(marked, 0, "buttons", "5")));
        assertEquals(score.text(), with.withoutMarks().text());
        return with.text().replaceAll("(?s)<direction .*?</direction>", "AIR");
    }

    @Test
    void wordsStandBeforeTheGraceNotesThatLeadToTheirNote() throws DiagnosedException {
        assertTrue(withWords(NOTE + GRACE + GRACE + NOTE, 3).contains(NOTE + "AIR<note><grace/>"));
    }

    @Test
    void graceNotesAtTheEndOfAVoiceLeadToNoNoteOfAnother() throws DiagnosedException {
        String notes = NOTE + GRACE + "<backup><duration>1</duration></backup>" + NOTE;
        assertTrue(withWords(notes, 2).contains("</backup>AIR<note>"));
    }
}
