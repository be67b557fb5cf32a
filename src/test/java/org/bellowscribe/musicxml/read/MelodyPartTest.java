package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.Ensemble.BASS;
import static org.bellowscribe.musicxml.read.Ensemble.CHORDS;
import static org.bellowscribe.musicxml.read.Ensemble.FIDDLE_ON_TOP;
import static org.bellowscribe.musicxml.read.Ensemble.LOW_TUNE;
import static org.bellowscribe.musicxml.read.Ensemble.RUNS;
import static org.bellowscribe.musicxml.read.Ensemble.SIXTH_BELOW;
import static org.bellowscribe.musicxml.read.Ensemble.TENOR;
import static org.bellowscribe.musicxml.read.Ensemble.THIRD_BELOW;
import static org.bellowscribe.musicxml.read.Ensemble.TUNE;
import static org.bellowscribe.musicxml.read.ScoreText.note;
import static org.bellowscribe.musicxml.read.ScoreText.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bellowscribe.score.Tune;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which part is the melody of instruments that play together. */
class MelodyPartTest {

    @Test
    void unnamedLowPartBeforeAnUnnamedHighOne() {
        assertEquals(
                "P2", new Ensemble().with("", "F", BASS).with("", "G", TUNE).chosen());
    }

    @Test
    void rightHandWrittenAfterTheLeft() {
        assertEquals(
                "P2",
                new Ensemble()
                        .with("Left Hand", "F", BASS)
                        .with("Right Hand", "G", TUNE)
                        .chosen());
        assertEquals(
                "P2",
                new Ensemble()
                        .with("Piano L.H.", "G", LOW_TUNE)
                        .with("Piano R.H.", "G", TUNE)
                        .chosen());
    }

    @Test
    void discantOfRecorders() {
        assertEquals(
                "P4",
                new Ensemble()
                        .with("Bass", "F", BASS)
                        .with("Tenor", "G", TENOR)
                        .with("Alt", "G", SIXTH_BELOW)
                        .with("Diskant", "G", TUNE)
                        .chosen());
    }

    @Test
    void fiddleOverAGuitarThatPicksSingleNotes() {
        assertEquals(
                "P2",
                new Ensemble()
                        .with("Guitar", "G", RUNS)
                        .with("Fiddle", "G", TUNE)
                        .chosen());
    }

    @Test
    void bassGuitarWrittenFirst() {
        assertEquals(
                "P3",
                new Ensemble()
                        .with("Bass Guitar", "F", BASS)
                        .with("Ukulele", "G", CHORDS)
                        .with("Whistle", "G", TUNE)
                        .chosen());
    }

    @Test
    void firstViolinOfAQuartet() {
        assertEquals(
                "P1",
                new Ensemble()
                        .with("Violin I", "G", TUNE)
                        .with("Violin II", "G", THIRD_BELOW)
                        .with("Viola", "C", TENOR)
                        .with("Violoncello", "F", BASS)
                        .chosen());
    }

    @Test
    void secondFiddleThatPlaysAboveTheFirst() {
        assertEquals(
                "P2",
                new Ensemble()
                        .with("Fiddle 2", "G", FIDDLE_ON_TOP)
                        .with("Fiddle 1", "G", TUNE)
                        .chosen());
    }

    @Test
    void chordsUnderAnUnnamedLine() {
        assertEquals(
                "P2",
                new Ensemble().with("", "G", CHORDS).with("", "G", LOW_TUNE).chosen());
    }

    @Test
    void ofTwoUnnamedLinesAThirdApartTheFirst() {
        assertEquals(
                "P1",
                new Ensemble().with("", "G", TUNE).with("", "G", THIRD_BELOW).chosen());
    }

    @Test
    void partThatMostlyRestsIsNotTheMelody() {
        assertEquals(
                "P2",
                new Ensemble()
                        .with("Trumpet", "G", "r:16 r:8 D5:4 E5:4")
                        .with("Clarinet", "G", LOW_TUNE)
                        .chosen());
    }

    @Test
    void fiddleOfAStringBandWrittenByScoreOrder() {
        assertEquals(
                "P3",
                new Ensemble()
                        .with("Banjo", "G", RUNS)
                        .with("Guitar", "G", CHORDS)
                        .with("Geige", "G", LOW_TUNE)
                        .with("Double Bass", "F", BASS)
                        .chosen());
    }

    @Test
    void firstOfTwoEqualInstruments() {
        assertEquals(
                "P2",
                new Ensemble()
                        .with("Clarinet in Bb 2", "G", THIRD_BELOW)
                        .with("Clarinet in Bb 1", "G", TUNE)
                        .chosen());
    }

    @Test
    void cornetOfABrassBand() {
        assertEquals(
                "P1",
                new Ensemble()
                        .with("Solo Cornet", "G", TUNE)
                        .with("Soprano Cornet", "G", FIDDLE_ON_TOP)
                        .with("Tenor Horn", "G", SIXTH_BELOW)
                        .with("Tuba", "F", BASS)
                        .chosen());
    }

    @Test
    void treblePartOfATwoHandedAccordion() {
        assertEquals(
                "P1",
                new Ensemble()
                        .with("Accordion", "G", TUNE)
                        .with("Accordion bass", "F", BASS)
                        .chosen());
    }

    @Test
    void pipesOverADrone() {
        assertEquals(
                "P2",
                new Ensemble()
                        .with("Drone", "G", "A4:32")
                        .with("Chanter", "G", TUNE)
                        .chosen());
    }

    @Test
    void glockenspielThatDoublesTheTuneHigh() {
        assertEquals(
                "P2",
                new Ensemble()
                        .with("Glockenspiel", "G", TUNE.replace("5:", "6:"))
                        .with("Flute", "G", TUNE)
                        .chosen());
    }

    @Test
    void italianParts() {
        assertEquals(
                "P3",
                new Ensemble()
                        .with("Basso continuo", "F", BASS)
                        .with("Violino secondo", "G", THIRD_BELOW)
                        .with("Violino primo", "G", TUNE)
                        .chosen());
    }

    @Test
    void saxophoneOverPianoOfTwoParts() {
        assertEquals(
                "P1",
                new Ensemble()
                        .with("Alto Sax", "G", TUNE)
                        .with("Piano (right hand)", "G", CHORDS)
                        .with("Piano (left hand)", "F", BASS)
                        .chosen());
    }

    @Test
    void celloThatPlaysTheTuneOverAHarp() {
        assertEquals(
                "P1",
                new Ensemble()
                        .with("Cello solo", "F", LOW_TUNE)
                        .with("Harp", "G", CHORDS)
                        .chosen());
    }

    @Test
    void duetOfRecorders() {
        assertEquals(
                "P2",
                new Ensemble()
                        .with("Alto Recorder", "G", SIXTH_BELOW)
                        .with("Soprano Recorder", "G", TUNE)
                        .chosen());
    }

    @Test
    void mandolinOverATenorBanjoThatRolls() {
        assertEquals(
                "P2",
                new Ensemble()
                        .with("Tenor Banjo", "G", RUNS)
                        .with("Mandoline", "G", TUNE)
                        .chosen());
    }

    @Test
    void choiceSaysWhatDecided() {
        String remarks = new Ensemble()
                .with("Left Hand", "F", BASS)
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
