package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.Ensemble.BASS;
import static org.bellowscribe.musicxml.read.Ensemble.CHORDS;
import static org.bellowscribe.musicxml.read.Ensemble.FIDDLE_ON_TOP;
import static org.bellowscribe.musicxml.read.Ensemble.HIGH_RUNS;
import static org.bellowscribe.musicxml.read.Ensemble.LOW_TUNE;
import static org.bellowscribe.musicxml.read.Ensemble.RUNS;
import static org.bellowscribe.musicxml.read.Ensemble.TENOR;
import static org.bellowscribe.musicxml.read.Ensemble.THIRD_BELOW;
import static org.bellowscribe.musicxml.read.Ensemble.TUNE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Which part is the melody where some are sung. */
class MelodyOfSongsTest {

    @Test
    void sopranoOfAChoir() {
        assertEquals(
                "P1",
                new Ensemble()
                        .sung("Soprano", "G", TUNE)
                        .sung("Alto", "G", THIRD_BELOW)
                        .sung("Tenor", "G", TENOR)
                        .sung("Bass", "F", BASS)
                        .chosen());
    }

    @Test
    void sopranoOfAChoirWrittenFromTheBassUp() {
        assertEquals(
                "P4",
                new Ensemble()
                        .sung("Bass", "F", BASS)
                        .sung("Tenor", "G", TENOR)
                        .sung("Alt", "G", THIRD_BELOW)
                        .sung("Sopran", "G", TUNE)
                        .chosen());
    }

    @Test
    void voiceBelowThePiano() {
        assertEquals(
                "P2",
                new Ensemble()
                        .with("Klavier", "G", RUNS)
                        .sung("Singstimme", "G", TUNE)
                        .chosen());
    }

    @Test
    void voiceOfABassSinger() {
        assertEquals(
                "P2",
                new Ensemble().with("Piano", "G", RUNS).sung("Voice", "F", BASS).chosen());
    }

    @Test
    void voiceUnderAFluteThatPlaysAroundIt() {
        assertEquals(
                "P2",
                new Ensemble()
                        .with("Flute", "G", HIGH_RUNS)
                        .sung("Voice", "G", TUNE)
                        .chosen());
    }

    @Test
    void descantAboveTheMelody() {
        assertEquals(
                "P2",
                new Ensemble()
                        .with("Descant", "G", FIDDLE_ON_TOP)
                        .with("Melody", "G", TUNE)
                        .chosen());
    }

    @Test
    void melodyWrittenAfterItsAccompaniment() {
        assertEquals(
                "P2",
                new Ensemble()
                        .with("Accompaniment", "G", RUNS)
                        .with("Melodie", "G", LOW_TUNE)
                        .chosen());
    }

    @Test
    void leadOfTwoSungParts() {
        assertEquals(
                "P2",
                new Ensemble()
                        .sung("Backing Vocals", "G", TUNE)
                        .sung("Lead Vocals", "G", LOW_TUNE)
                        .chosen());
    }

    @Test
    void sungMelodyInTheTenorClefOfAnUnnamedPart() {
        assertEquals(
                "P2", new Ensemble().with("", "G", RUNS).sung("", "C", LOW_TUNE).chosen());
    }

    @Test
    void frenchSongWithHarpsichord() {
        assertEquals(
                "P3",
                new Ensemble()
                        .with("Clavecin, main droite", "G", RUNS)
                        .with("Clavecin, main gauche", "F", BASS)
                        .sung("Dessus", "G", TUNE)
                        .chosen());
    }

    @Test
    void melodyOfAChoirInTheTenor() {
        assertEquals(
                "P3",
                new Ensemble()
                        .sung("Treble", "G", FIDDLE_ON_TOP)
                        .sung("Counter", "G", THIRD_BELOW)
                        .sung("Tenor (melody)", "G", LOW_TUNE)
                        .sung("Bass", "F", BASS)
                        .chosen());
    }

    @Test
    void songOfABandWithKeyboard() {
        assertEquals(
                "P4",
                new Ensemble()
                        .with("Drumset", "percussion", RUNS)
                        .with("Electric Bass", "F", BASS)
                        .with("Synth Pad", "G", CHORDS)
                        .sung("Vox", "G", LOW_TUNE)
                        .chosen());
    }

    @Test
    void hymnTuneWithOrgan() {
        assertEquals(
                "P2",
                new Ensemble()
                        .with("Organ", "G", CHORDS)
                        .sung("Gemeinde", "G", LOW_TUNE)
                        .chosen());
    }
}
