package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;

/** Lines about the tune, below its beginning. */
class LineMarksTest {

    private static final String NOTE = "<note><rest/><duration>8</duration></note>";
    private static final List<Annotation> MARKS = List.of(
            new Annotation.Words(0, true, "push"), new Annotation.Line(0, "New: G & D"), new Annotation.Line(0, "3/4"));

    private static ScoreDocument marked() throws DiagnosedException {
        return TinyScore.decode(TinyScore.of(NOTE)).withMarks(MARKS);
    }

    @Test
    void everyLineIsADirectionOfItsOwnBelowTheStaff() throws DiagnosedException {
        assertEquals(
                "<direction placement=\"above\" id=\"bellowscribe-w1\"><direction-type><words>push</words></direction-type>"
                        + "</direction><direction placement=\"below\" id=\"bellowscribe-t1\"><direction-type><words>New: G &amp; D"
                        + "</words></direction-type></direction><direction placement=\"below\" id=\"bellowscribe-t2\">"
                        + "<direction-type><words>3/4</words></direction-type></direction>" + NOTE,
                TinyScore.measure(marked()).replaceAll("\\n *", ""));
    }

    @Test
    void linesComeOutWithoutATrace() throws DiagnosedException {
        assertEquals(TinyScore.of(NOTE), marked().withoutMarks().text());
    }

    @Test
    void nothingThatIsPlayedIsReadFromALine() throws DiagnosedException {
        assertEquals(List.of(new Annotation.Words(0, true, "push")), marked().marks());
    }

    @Test
    void theMarkedScoreIsValid() throws DiagnosedException {
        assertEquals(List.of(), SchemaCheck.check(marked().text()));
    }
}
