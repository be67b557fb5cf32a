package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.ScoreText.notes;
import static org.bellowscribe.musicxml.read.ScoreText.read;
import static org.bellowscribe.musicxml.read.ScoreText.score;
import static org.bellowscribe.musicxml.read.ScoreText.sounds;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.score.Event;
import org.junit.jupiter.api.Test;

class TieReadingTest {

    private static final String BACKWARD = "<barline location=\"right\"><repeat direction=\"backward\"/></barline>";

    @Test
    void tiedNotesAreOneEvent() {
        assertEquals("D5*3/1 E5*1/1", sounds(read(score(notes("D5:4< D5:8> E5:4")))));
    }

    @Test
    void tiesGoOverBarLines() {
        assertEquals("D5*9/1 E5*3/1", sounds(read(score(notes("D5:16<"), notes("D5:16><"), notes("D5:4> E5:12")))));
    }

    @Test
    void tiedEventKeepsItsFirstNote() {
        assertEquals(
                List.of(0), read(score(notes("D5:8< D5:8>"))).events().get(0).noteIndices());
    }

    @Test
    void slurBetweenEqualNotesIsNoTie() {
        assertEquals("D5*2/1 D5*2/1", sounds(read(score(notes("D5:8 D5:8")))));
    }

    @Test
    void tieWithoutAnEndIsNoTie() {
        assertEquals("D5*2/1 D5*2/1", sounds(read(score(notes("D5:8< D5:8")))));
        assertEquals("D5*2/1 E5*2/1", sounds(read(score(notes("D5:8< E5:8>")))));
    }

    @Test
    void tieIsNotJoinedOverARepeat() {
        assertEquals("D5*4/1 D5*4/1", sounds(read(score(notes("D5:16<") + BACKWARD, notes("D5:16>")))));
    }

    @Test
    void tieIsNotJoinedIntoARepeatedSection() {
        String forward = "<barline location=\"left\"><repeat direction=\"forward\"/></barline>";
        assertEquals("D5*4/1 D5*4/1", sounds(read(score(notes("D5:16<"), forward + notes("D5:16>") + BACKWARD))));
    }

    @Test
    void wholeGroupsAreTied() {
        assertEquals("D5+F#5*4/1", sounds(read(score(notes("D5:8< +F#5:8< D5:8> +F#5:8>")))));
    }

    @Test
    void groupOfWhichOnlyAPartIsTiedIsPlayedAgain() {
        assertEquals("D5+F#5*2/1 D5*2/1", sounds(read(score(notes("D5:8< +F#5:8 D5:8>")))));
    }

    @Test
    void tiedNotationsCountLikeTies() {
        String start = "<notations><tied type=\"start\"/></notations>";
        String stop = "<notations><tied type=\"stop\"/></notations>";
        assertEquals("D5*4/1", sounds(read(score(ScoreText.note("D5:8", start) + ScoreText.note("D5:8", stop)))));
    }

    @Test
    void enharmonicNotesMayBeTied() {
        assertEquals("F#5*4/1", sounds(read(score(notes("F#5:8< Gb5:8>")))));
    }

    private static String ending(int number, String inside) {
        return "<barline location=\"left\"><ending number=\"" + number + "\" type=\"start\"/></barline>" + inside;
    }

    private static List<Boolean> held(String... measures) {
        return read(score(measures)).events().stream().map(Event::heldOver).toList();
    }

    @Test
    void noteTiedIntoAFirstEndingIsHeldOver() {
        String first = ending(1, notes("D5:4> E5:12"))
                + BACKWARD.replace("<repeat", "<ending number=\"1\" type=\"stop\"/><repeat");
        assertEquals(
                List.of(false, false, true, false, false),
                held(notes("E5:8 D5:8<"), first, ending(2, notes("F#5:16"))));
        assertEquals(
                List.of(false, false, true, false, true, false),
                held(notes("E5:8 D5:8<"), first, ending(2, notes("D5:8> F#5:8"))));
    }

    @Test
    void noteThatIsStruckOnAnotherWayIsNotHeldOver() {
        String forward = "<barline location=\"left\"><repeat direction=\"forward\"/></barline>";
        assertEquals(List.of(false, false), held(notes("D5:16<"), forward + notes("D5:16>") + BACKWARD));
    }
}
