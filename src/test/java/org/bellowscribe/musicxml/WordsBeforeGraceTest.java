package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.junit.jupiter.api.Test;

class WordsBeforeGraceTest {

    private static final String NOTE = "<note><rest/></note>\n";
    private static final String GRACE = "<note><grace/><pitch><step>D</step><octave>4</octave></pitch></note>\n";

    private static List<Diagnostic> remarks(int note, String... notes) throws DiagnosedException {
        return TinyScore.decode(TinyScore.of(String.join("", notes)))
                .withMarks(List.of(new Annotation.Words(note, true, "air")))
                .remarksOnShowing();
    }

    @Test
    void wordsOfANoteWhoseGraceNotesEndTheMeasureAreTold() throws DiagnosedException {
        List<Diagnostic> remarks = remarks(1, NOTE, NOTE, GRACE, GRACE);
        assertEquals(1, remarks.size());
        assertEquals(DiagnosticCode.WORDS, remarks.get(0).code());
        assertEquals(1, remarks.get(0).place().measure());
    }

    @Test
    void wordsElsewhereAreNot() throws DiagnosedException {
        assertEquals(List.of(), remarks(0, NOTE, NOTE, GRACE));
        assertEquals(List.of(), remarks(0, NOTE, GRACE, NOTE));
        assertEquals(List.of(), remarks(1, GRACE, NOTE));
        assertEquals(List.of(), remarks(2, NOTE, GRACE, NOTE));
    }
}
