package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.ScoreText.note;
import static org.bellowscribe.musicxml.read.ScoreText.notes;
import static org.bellowscribe.musicxml.read.ScoreText.read;
import static org.bellowscribe.musicxml.read.ScoreText.score;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.score.Event;
import org.junit.jupiter.api.Test;

class SlurReadingTest {

    private static final String START = slur("start", 1);
    private static final String STOP = slur("stop", 1);

    private static String slur(String type, int number) {
        return "<notations><slur type=\"" + type + "\" number=\"" + number + "\"/></notations>";
    }

    /** Returns the pitches to which a slur leads. */
    private static List<String> slurred(String... measures) {
        return read(score(measures)).events().stream()
                .filter(Event::slurred)
                .map(event -> event.pitches().get(0).toString())
                .toList();
    }

    @Test
    void slurLeadsToEachOfItsNotesButTheFirst() {
        assertEquals(
                List.of("E5", "F#5"),
                slurred(notes("C5:4") + note("D5:4", START) + notes("E5:4") + note("F#5:2", STOP) + notes("G5:2")));
    }

    @Test
    void slurGoesOverTheBarLine() {
        assertEquals(List.of("E5"), slurred(note("D5:16", START), note("E5:16", STOP)));
    }

    @Test
    void noteOnWhichOneSlurEndsMayBeginTheNext() {
        assertEquals(
                List.of("E5", "F#5"),
                slurred(note("D5:4", START) + note("E5:4", START + STOP) + note("F#5:4", STOP) + notes("G5:4")));
    }

    @Test
    void slursOverlapUnderNumbers() {
        assertEquals(
                List.of("E5", "F#5", "G5"),
                slurred(note("D5:4", START)
                        + note("E5:4", slur("start", 2))
                        + note("F#5:4", STOP)
                        + note("G5:4", slur("stop", 2))));
    }

    @Test
    void notesOfAGroupBeginTheirSlurTogether() {
        assertEquals(
                List.of("G5"), slurred(note("D5:4", START) + notes("+F#5:4") + note("G5:4", STOP) + notes("A5:8")));
    }

    @Test
    void slurWithoutAnEndSaysNothing() {
        assertEquals(List.of(), slurred(note("D5:4", START) + notes("E5:4 F#5:8")));
        assertEquals(
                List.of("A5"), slurred(note("D5:4", START) + notes("E5:4") + note("G5:4", START) + note("A5:4", STOP)));
    }

    @Test
    void slurFromAGraceNoteSaysNothing() {
        String grace = "<note><grace/><pitch><step>C</step><octave>5</octave></pitch>" + START + "</note>";
        assertEquals(List.of(), slurred(notes("B4:4") + grace + note("D5:4", STOP) + notes("E5:8")));
    }

    @Test
    void numberMayBeLeftOut() {
        String start = "<notations><slur type=\"start\"/></notations>";
        String stop = "<notations><slur type=\"stop\"/></notations>";
        assertEquals(List.of("E5"), slurred(note("D5:8", start) + note("E5:8", stop)));
    }

    @Test
    void slurLeadsFromATiedNoteToTheNext() {
        assertEquals(List.of("E5"), slurred(notes("D5:4<") + note("D5:4>", START) + note("E5:8", STOP)));
    }
}
