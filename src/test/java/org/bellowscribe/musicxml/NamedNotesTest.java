package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;

class NamedNotesTest {

    private static final String SCORE =
            "<score-partwise><part id=\"P1\"><measure number=\"1\"><note><rest/></note><note id='own' dynamics=\"9\"><rest/></note>"
                    + "<note/></measure></part></score-partwise>";

    private static ScoreDocument document(String text) throws DiagnosedException {
        return ScoreDocument.decode(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String named(Map<Integer, String> ids) throws DiagnosedException {
        return ScoreDocument.decode(NamedNotes.compressed(document(SCORE), ids)).text();
    }

    @Test
    void notesAreCountedAndNamed() throws DiagnosedException {
        String text = named(Map.of(0, "n0", 2, "n2"));
        assertTrue(text.contains("<note id=\"n0\"><rest/></note><note id='own' dynamics=\"9\">"), text);
        assertTrue(text.contains("<note id=\"n2\"/>"), text);
    }

    @Test
    void aNameTakesThePlaceOfTheNotesOwn() throws DiagnosedException {
        String text = named(Map.of(1, "n1"));
        assertTrue(text.contains("<note id=\"n1\" dynamics=\"9\">"), text);
    }

    @Test
    void theSameScoreBecomesTheSameBytes() throws DiagnosedException {
        assertArrayEquals(
                NamedNotes.compressed(document(SCORE), Map.of(0, "a")),
                NamedNotes.compressed(document(SCORE), Map.of(0, "a")));
    }
}
