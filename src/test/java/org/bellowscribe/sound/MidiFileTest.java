package org.bellowscribe.sound;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.replay.Played;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.theory.Fraction;
import org.junit.jupiter.api.Test;

/** Four beats are counted in, so what is played begins at the fourth quarter. */
class MidiFileTest {

    private static final Tune TUNE = TuneText.of("C4*2 D4*2 | r*1 C4*3", 60, List.of(0, 1, 0, 1));

    private static Played played() {
        return new Played(TUNE, 5000)
                .push(2000, 1)
                .bass("0", "1")
                .pull(3000, 1)
                .air(AirUse.LIGHT, 1000)
                .pull(1000)
                .push(2000, 1);
    }

    private static MidiNotes heard(Played played) throws IOException {
        return new MidiNotes(MidiFile.of(played.decided()));
    }

    private static MidiNotes.Note note(int pitch, long start, long end) {
        return new MidiNotes.Note(pitch, Fraction.of(start, 1), Fraction.of(end, 1));
    }

    @Test
    void rightHandSoundsThroughEveryRepeat() throws IOException {
        assertEquals(
                List.of(
                        note(60, 4, 6),
                        note(62, 6, 8),
                        note(60, 9, 12),
                        note(60, 12, 14),
                        note(62, 14, 16),
                        note(60, 17, 20)),
                heard(played()).channel(1));
    }

    @Test
    void leftHandSoundsAsItIsWrittenOut() throws IOException {
        assertEquals(List.of(note(48, 4, 5), note(48, 12, 13)), heard(played()).channel(2));
    }

    @Test
    void measureIsCountedIn() throws IOException {
        assertEquals(
                List.of(76, 77, 77, 77),
                heard(played()).channel(10).stream().map(MidiNotes.Note::pitch).toList());
    }

    @Test
    void pickUpIsCountedInWithWhatLiesBeforeIt() throws IOException {
        Tune tune = TuneText.of("C4 | C4*4", 60);
        MidiNotes heard = heard(new Played(tune, 5000).push(1000, 1).push(2000, 1));
        assertEquals(
                List.of(76, 77, 77, 77, 76, 77, 77),
                heard.channel(10).stream().map(MidiNotes.Note::pitch).toList());
        assertEquals(note(60, 7, 8), heard.channel(1).get(0));
    }

    @Test
    void directionsAndAirAreTexts() throws IOException {
        assertEquals(
                List.of(
                        "4/1 push",
                        "6/1 pull",
                        "6/1 light air",
                        "9/1 push",
                        "14/1 pull",
                        "14/1 light air",
                        "17/1 push"),
                heard(played()).texts(1));
    }

    @Test
    void sectionsAreMarkers() throws IOException {
        assertEquals(
                List.of("4/1 1-2, playing 1", "12/1 1-2, playing 2"),
                heard(played()).texts(6));
    }

    @Test
    void itLastsAsLongAsTheTempoSays() throws IOException {
        assertEquals(20.0, heard(played()).seconds(), 0.001);
    }

    @Test
    void timesThatNoUsualGridHasAreExact() throws IOException {
        Tune odd = TuneText.of("C4*1/7 D4*1/11 C4*291/77", 60);
        MidiNotes heard = heard(new Played(odd, 5000).push(100, 1).pull(100, 1).push(1000, 1));
        assertEquals(
                new MidiNotes.Note(62, Fraction.of(29, 7), Fraction.of(29, 7).plus(Fraction.of(1, 11))),
                heard.channel(1).get(1));
    }

    @Test
    void noteThatIsHeldOverIsNotStruckAgain() throws IOException {
        assertEquals(
                List.of(note(60, 4, 12)),
                heard(new Played(tied(), 5000).push(1000, 1).push(1000, 1)).channel(1));
    }

    @Test
    void noteThatIsHeldOverAgainstTheBellowsIsStruckAgain() throws IOException {
        assertEquals(
                List.of(note(60, 4, 8), note(60, 8, 12)),
                heard(new Played(tied(), 5000).push(1000, 1).pull(1000, 2)).channel(1));
    }

    private static Tune tied() {
        Tune tune = TuneText.of("C4*4 | C4*4", 60);
        List<Event> events = new ArrayList<>(tune.events());
        Event e = events.get(1);
        events.set(1, new Event(1, e.measure(), e.onset(), e.duration(), e.pitches(), e.noteIndices(), true, false));
        return new Tune("tied", "P1", tune.measures(), events, List.of(), tune.tempo(), tune.playOrder(), List.of());
    }

    @Test
    void sameTuneGivesTheSameBytes() {
        assertArrayEquals(MidiFile.of(played().decided()), MidiFile.of(played().decided()));
    }
}
