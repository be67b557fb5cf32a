package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.annotation.Annotation.Syllable;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.junit.jupiter.api.Test;

class LyricLinesTest {

    private static ScoreDocument score(String... lyrics) throws DiagnosedException {
        return TinyScore.decode(
                TinyScore.of("<note><rest/>" + String.join("", lyrics) + "</note>\n<note><rest/></note>"));
    }

    private static ScoreDocument marked(ScoreDocument score) {
        return score.withMarks(List.of(new Syllable(1, 0, "a", "5"), new Syllable(1, 1, "b", "5")));
    }

    private static List<String> warnings(ScoreDocument score) {
        return score.remarksOnShowing().stream().map(Diagnostic::text).toList();
    }

    @Test
    void ourFirstLineFollowsTheHighestNumber() throws DiagnosedException {
        String text =
                marked(score("<lyric number='2'/>", "<lyric number=' 10 '/>")).text();
        assertTrue(text.contains("<lyric number=\"11\" name=\"bellowscribe-a\">"), text);
        assertTrue(text.contains("<lyric number=\"12\" name=\"bellowscribe-b\">"), text);
    }

    @Test
    void lyricsWithoutNumberTakeOneLineEach() throws DiagnosedException {
        String text = marked(score("<lyric/>", "<lyric number='chorus'/>")).text();
        assertTrue(text.contains("<lyric number=\"3\" name=\"bellowscribe-a\">"), text);
    }

    @Test
    void numberedLyricsGiveNoWarning() throws DiagnosedException {
        assertEquals(List.of(), warnings(marked(score("<lyric number='1'/>"))));
    }

    @Test
    void lyricsWithoutNumberGiveOneWarningAtTheFirst() throws DiagnosedException {
        ScoreDocument score = marked(score("<lyric number='1'/>", "<lyric name='x'/>", "<lyric number='1a'/>"));
        assertEquals(
                List.of("Lyrics without an integer as their number (2) may be shown on the same line as the marks."),
                warnings(score));
        assertEquals(9, score.remarksOnShowing().get(0).place().line());
    }

    @Test
    void aTenthLineGivesAWarning() throws DiagnosedException {
        assertEquals(List.of(), warnings(marked(score("<lyric number='7'/>"))));
        assertEquals(
                List.of("The lyric lines go up to number 10, and some programs put line 10 before line 2."),
                warnings(marked(score("<lyric number='8'/>"))));
    }
}
