package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.ScoreText.ATTRIBUTES;
import static org.bellowscribe.musicxml.read.ScoreText.note;
import static org.bellowscribe.musicxml.read.ScoreText.read;
import static org.bellowscribe.musicxml.read.ScoreText.wrap;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.score.Tune;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Which part is the melody, in scores as ensembles write them. A part is written as its name, its clef, {@code la} if it is sung, and its notes.
 */
class MelodyPartTest {

    private static final String TUNE = "D5:4 E5:4 F#5:4 G5:4 A5:8 G5:4 F#5:4";
    private static final String LOW_TUNE = "D4:4 E4:4 F#4:4 G4:4 A4:8 G4:4 F#4:4";
    private static final String THIRD_BELOW = "B4:4 C5:4 D5:4 E5:4 F#5:8 E5:4 D5:4";
    private static final String SIXTH_BELOW = "F4:4 G4:4 A4:4 B4:4 C5:8 B4:4 A4:4";
    private static final String BASS = "D3:8 A2:8 D3:8 A2:8";
    private static final String TENOR = "F#3:8 A3:8 D4:8 A3:8";
    private static final String CHORDS = "D4:8 +F#4:8 +A4:8 D4:8 +F#4:8 +A4:8 D4:8 +G4:8 +B4:8 D4:8 +F#4:8 +A4:8";
    private static final String RUNS =
            "D4:2 F#4:2 A4:2 F#4:2 D4:2 F#4:2 A4:2 F#4:2 D4:2 G4:2 B4:2 G4:2 D4:2 F#4:2 A4:2 F#4:2";
    private static final String HIGH_RUNS = RUNS.replace("4:", "6:");
    private static final String FIDDLE_ON_TOP = "A5:4 B5:4 A5:4 B5:4 A5:8 B5:4 A5:4";

    private final List<String> parts = new ArrayList<>();
    private final StringBuilder list = new StringBuilder("<part-list>");

    private MelodyPartTest with(String name, String clef, String notes) {
        return add(name, clef, notes, "");
    }

    private MelodyPartTest sung(String name, String clef, String notes) {
        return add(name, clef, notes, "<lyric><text>la</text></lyric>");
    }

    private MelodyPartTest add(String name, String clef, String notes, String lyric) {
        String id = "P" + (parts.size() + 1);
        list.append("<score-part id=\"" + id + "\"><part-name>" + name + "</part-name></score-part>");
        StringBuilder inside = new StringBuilder(ATTRIBUTES);
        inside.append("<attributes><clef><sign>" + clef + "</sign></clef></attributes>");
        Stream.of(notes.split(" ")).forEach(word -> inside.append(note(word, word.startsWith("r") ? "" : lyric)));
        parts.add(ScoreText.part(id, inside.toString(), inside.substring(ATTRIBUTES.length())));
        return this;
    }

    private Tune tune() {
        return read(wrap(list + "</part-list>" + String.join("", parts)));
    }

    private String chosen() {
        return tune().part();
    }

    @Test
    void sopranoOfAChoir() {
        assertEquals(
                "P1",
                sung("Soprano", "G", TUNE)
                        .sung("Alto", "G", THIRD_BELOW)
                        .sung("Tenor", "G", TENOR)
                        .sung("Bass", "F", BASS)
                        .chosen());
    }

    @Test
    void sopranoOfAChoirWrittenFromTheBassUp() {
        assertEquals(
                "P4",
                sung("Bass", "F", BASS)
                        .sung("Tenor", "G", TENOR)
                        .sung("Alt", "G", THIRD_BELOW)
                        .sung("Sopran", "G", TUNE)
                        .chosen());
    }

    @Test
    void voiceBelowThePiano() {
        assertEquals(
                "P2", with("Klavier", "G", RUNS).sung("Singstimme", "G", TUNE).chosen());
    }

    @Test
    void voiceOfABassSinger() {
        assertEquals("P2", with("Piano", "G", RUNS).sung("Voice", "F", BASS).chosen());
    }

    @Test
    void voiceUnderAFluteThatPlaysAroundIt() {
        assertEquals(
                "P2", with("Flute", "G", HIGH_RUNS).sung("Voice", "G", TUNE).chosen());
    }

    @Test
    void unnamedLowPartBeforeAnUnnamedHighOne() {
        assertEquals("P2", with("", "F", BASS).with("", "G", TUNE).chosen());
    }

    @Test
    void rightHandWrittenAfterTheLeft() {
        assertEquals(
                "P2", with("Left Hand", "F", BASS).with("Right Hand", "G", TUNE).chosen());
        parts.clear();
        list.setLength("<part-list>".length());
        assertEquals(
                "P2",
                with("Piano L.H.", "G", LOW_TUNE).with("Piano R.H.", "G", TUNE).chosen());
    }

    @Test
    void discantOfRecorders() {
        assertEquals(
                "P4",
                with("Bass", "F", BASS)
                        .with("Tenor", "G", TENOR)
                        .with("Alt", "G", SIXTH_BELOW)
                        .with("Diskant", "G", TUNE)
                        .chosen());
    }

    @Test
    void fiddleOverAGuitarThatPicksSingleNotes() {
        assertEquals("P2", with("Guitar", "G", RUNS).with("Fiddle", "G", TUNE).chosen());
    }

    @Test
    void bassGuitarWrittenFirst() {
        assertEquals(
                "P3",
                with("Bass Guitar", "F", BASS)
                        .with("Ukulele", "G", CHORDS)
                        .with("Whistle", "G", TUNE)
                        .chosen());
    }

    @Test
    void firstViolinOfAQuartet() {
        assertEquals(
                "P1",
                with("Violin I", "G", TUNE)
                        .with("Violin II", "G", THIRD_BELOW)
                        .with("Viola", "C", TENOR)
                        .with("Violoncello", "F", BASS)
                        .chosen());
    }

    @Test
    void secondFiddleThatPlaysAboveTheFirst() {
        assertEquals(
                "P2",
                with("Fiddle 2", "G", FIDDLE_ON_TOP).with("Fiddle 1", "G", TUNE).chosen());
    }

    @Test
    void descantAboveTheMelody() {
        assertEquals(
                "P2",
                with("Descant", "G", FIDDLE_ON_TOP).with("Melody", "G", TUNE).chosen());
    }

    @Test
    void melodyWrittenAfterItsAccompaniment() {
        assertEquals(
                "P2",
                with("Accompaniment", "G", RUNS).with("Melodie", "G", LOW_TUNE).chosen());
    }

    @Test
    void leadOfTwoSungParts() {
        assertEquals(
                "P2",
                sung("Backing Vocals", "G", TUNE)
                        .sung("Lead Vocals", "G", LOW_TUNE)
                        .chosen());
    }

    @Test
    void chordsUnderAnUnnamedLine() {
        assertEquals("P2", with("", "G", CHORDS).with("", "G", LOW_TUNE).chosen());
    }

    @Test
    void ofTwoUnnamedLinesAThirdApartTheFirst() {
        assertEquals("P1", with("", "G", TUNE).with("", "G", THIRD_BELOW).chosen());
    }

    @Test
    void partThatMostlyRestsIsNotTheMelody() {
        assertEquals(
                "P2",
                with("Trumpet", "G", "r:16 r:8 D5:4 E5:4")
                        .with("Clarinet", "G", LOW_TUNE)
                        .chosen());
    }

    @Test
    void fiddleOfAStringBandWrittenByScoreOrder() {
        assertEquals(
                "P3",
                with("Banjo", "G", RUNS)
                        .with("Guitar", "G", CHORDS)
                        .with("Geige", "G", LOW_TUNE)
                        .with("Double Bass", "F", BASS)
                        .chosen());
    }

    @Test
    void sungMelodyInTheTenorClefOfAnUnnamedPart() {
        assertEquals("P2", with("", "G", RUNS).sung("", "C", LOW_TUNE).chosen());
    }

    @Test
    void firstOfTwoEqualInstruments() {
        assertEquals(
                "P2",
                with("Clarinet in Bb 2", "G", THIRD_BELOW)
                        .with("Clarinet in Bb 1", "G", TUNE)
                        .chosen());
    }

    @Test
    void cornetOfABrassBand() {
        assertEquals(
                "P1",
                with("Solo Cornet", "G", TUNE)
                        .with("Soprano Cornet", "G", FIDDLE_ON_TOP)
                        .with("Tenor Horn", "G", SIXTH_BELOW)
                        .with("Tuba", "F", BASS)
                        .chosen());
    }

    @Test
    void treblePartOfATwoHandedAccordion() {
        assertEquals(
                "P1",
                with("Accordion", "G", TUNE).with("Accordion bass", "F", BASS).chosen());
    }

    @Test
    void frenchSongWithHarpsichord() {
        assertEquals(
                "P3",
                with("Clavecin, main droite", "G", RUNS)
                        .with("Clavecin, main gauche", "F", BASS)
                        .sung("Dessus", "G", TUNE)
                        .chosen());
    }

    @Test
    void pipesOverADrone() {
        assertEquals(
                "P2", with("Drone", "G", "A4:32").with("Chanter", "G", TUNE).chosen());
    }

    @Test
    void glockenspielThatDoublesTheTuneHigh() {
        assertEquals(
                "P2",
                with("Glockenspiel", "G", TUNE.replace("5:", "6:"))
                        .with("Flute", "G", TUNE)
                        .chosen());
    }

    @Test
    void italianParts() {
        assertEquals(
                "P3",
                with("Basso continuo", "F", BASS)
                        .with("Violino secondo", "G", THIRD_BELOW)
                        .with("Violino primo", "G", TUNE)
                        .chosen());
    }

    @Test
    void melodyOfAChoirInTheTenor() {
        assertEquals(
                "P3",
                sung("Treble", "G", FIDDLE_ON_TOP)
                        .sung("Counter", "G", THIRD_BELOW)
                        .sung("Tenor (melody)", "G", LOW_TUNE)
                        .sung("Bass", "F", BASS)
                        .chosen());
    }

    @Test
    void songOfABandWithKeyboard() {
        assertEquals(
                "P4",
                with("Drumset", "percussion", RUNS)
                        .with("Electric Bass", "F", BASS)
                        .with("Synth Pad", "G", CHORDS)
                        .sung("Vox", "G", LOW_TUNE)
                        .chosen());
    }

    @Test
    void saxophoneOverPianoOfTwoParts() {
        assertEquals(
                "P1",
                with("Alto Sax", "G", TUNE)
                        .with("Piano (right hand)", "G", CHORDS)
                        .with("Piano (left hand)", "F", BASS)
                        .chosen());
    }

    @Test
    void celloThatPlaysTheTuneOverAHarp() {
        assertEquals(
                "P1",
                with("Cello solo", "F", LOW_TUNE).with("Harp", "G", CHORDS).chosen());
    }

    @Test
    void duetOfRecorders() {
        assertEquals(
                "P2",
                with("Alto Recorder", "G", SIXTH_BELOW)
                        .with("Soprano Recorder", "G", TUNE)
                        .chosen());
    }

    @Test
    void hymnTuneWithOrgan() {
        assertEquals(
                "P2", with("Organ", "G", CHORDS).sung("Gemeinde", "G", LOW_TUNE).chosen());
    }

    @Test
    void mandolinOverATenorBanjoThatRolls() {
        assertEquals(
                "P2",
                with("Tenor Banjo", "G", RUNS).with("Mandoline", "G", TUNE).chosen());
    }

    @Test
    void choiceSaysWhatDecided() {
        String remarks = with("Left Hand", "F", BASS)
                .with("Right Hand", "G", TUNE)
                .tune()
                .diagnostics()
                .toString();
        assertTrue(
                remarks.contains(
                        "The melody is read from part P2 (Right Hand), staff 1, voice 1, because of its name, its"
                                + " range and its clef; the score has 2 parts with notes."),
                remarks);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 12})
    void bassStaffOfAPianoIsNeverTheMelody(int bassNotes) {
        String clefs = "<attributes><staves>2</staves><clef number=\"1\"><sign>F</sign></clef>"
                + "<clef number=\"2\"><sign>G</sign></clef></attributes>";
        String bass = note("D3:1", "<staff>1</staff>").repeat(bassNotes);
        String treble = "<backup><duration>" + bassNotes + "</duration></backup>" + note("D5:4", "<staff>2</staff>");
        Tune tune = read(ScoreText.score(clefs + bass + treble));
        assertEquals("D5*1/1", ScoreText.sounds(tune).split(" ")[0]);
    }
}
