package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.ScoreText.note;
import static org.bellowscribe.musicxml.read.ScoreText.notes;
import static org.bellowscribe.musicxml.read.ScoreText.read;
import static org.bellowscribe.musicxml.read.ScoreText.score;
import static org.bellowscribe.musicxml.read.ScoreText.sounds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.junit.jupiter.api.Test;

class MelodyReadingTest {

    @Test
    void notesAndRestsFollowInTime() {
        Tune tune = read(score(notes("D5:4 F#5:2 r:2 A5:8")));
        assertEquals(List.of("0@0/1:D5*1/1", "0@1/1:F#5*1/2", "0@3/2:r*1/2", "0@2/1:A5*2/1"), ScoreText.events(tune));
    }

    @Test
    void chordNotesMakeOneGroup() {
        Tune tune = read(score(notes("D5:8 +F#5:8 G5:8")));
        assertEquals("D5+F#5*2/1 G5*2/1", sounds(tune));
        assertEquals(List.of(0, 1), tune.events().get(0).noteIndices());
    }

    @Test
    void chordNoteWithoutANoteBeforeItBeginsAGroup() {
        assertEquals("D5+F#5*4/1", sounds(read(score(notes("+D5:16 +F#5:16")))));
    }

    @Test
    void noteIndicesFollowThePitches() {
        Event event = read(score(notes("A5:16 +D5:16"))).events().get(0);
        assertEquals("[D5, A5]", event.pitches().toString());
        assertEquals(List.of(1, 0), event.noteIndices());
        assertEquals(0, event.firstNoteIndex());
    }

    @Test
    void graceNotesAreNoEventsButCountAmongTheNotes() {
        String grace = "<note><grace/><pitch><step>E</step><octave>5</octave></pitch></note>";
        Tune tune = read(score(grace + notes("D5:16")));
        assertEquals("D5*4/1", sounds(tune));
        assertEquals(1, tune.events().get(0).firstNoteIndex());
    }

    @Test
    void cueSlashUnpitchedAndHiddenNotesAreSilent() {
        String slash = note("D5:4", "<notehead>slash</notehead>");
        String cue = note("D5:4", "").replace("<pitch>", "<cue/><pitch>");
        String drum = "<note><unpitched/><duration>4</duration></note>";
        String hidden = note("D5:4", "").replace("<note>", "<note print-object=\"no\">");
        assertEquals("A5*1/1 r*3/1", sounds(read(score(notes("A5:4") + slash + cue + drum))));
        Tune tune = read(score(notes("A5:12") + hidden));
        assertEquals("A5*3/1 r*1/1", sounds(tune));
        assertTrue(tune.diagnostics().toString().contains("1 note of the melody is hidden"));
    }

    @Test
    void forwardMakesAGapWithoutANote() {
        Tune tune = read(score(notes("D5:4") + "<forward><duration>4</duration></forward>" + notes("D5:8")));
        assertEquals("D5*1/1 r*1/1 D5*2/1", sounds(tune));
        assertTrue(tune.events().get(1).isGap());
    }

    @Test
    void secondVoiceAfterABackupIsLeftOut() {
        String two = notes("D5:16") + "<backup><duration>16</duration></backup>" + notes("B3:8 A3:8");
        assertEquals("D5*4/1", sounds(read(score(two))));
    }

    @Test
    void tupletsAreExact() {
        String tune = "<attributes><divisions>3</divisions></attributes>" + notes("D5:1 E5:1 F#5:1 G5:9");
        assertEquals("D5*1/3 E5*1/3 F#5*1/3 G5*3/1", sounds(read(score(tune))));
    }

    @Test
    void divisionsMayChangeInMidMeasure() {
        String tune = notes("D5:8") + "<attributes><divisions>1</divisions></attributes>" + notes("E5:2");
        assertEquals("D5*2/1 E5*2/1", sounds(read(score(tune))));
    }

    @Test
    void fractionalDurationsAreExact() {
        assertEquals("D5*1/8 E5*31/8", sounds(read(score(notes("D5:0.5 E5:15.5")))));
    }

    @Test
    void durationMayBeMissingWhereTheShapeSaysIt() {
        String shape = "<note><pitch><step>D</step><octave>5</octave></pitch><type>quarter</type><dot/></note>";
        assertEquals("D5*3/2 E5*5/2", sounds(read(score(shape + notes("E5:10")))));
        String triplet = "<note><pitch><step>D</step><octave>5</octave></pitch><type>eighth</type><time-modification>"
                + "<actual-notes>3</actual-notes><normal-notes>2</normal-notes></time-modification></note>";
        assertEquals(
                "D5*1/3 r*11/3",
                sounds(
                        read(
                                score(
                                        triplet + "<forward><duration>11</duration></forward>"
                                                + "<attributes><divisions>3</divisions></attributes><forward><duration>2.75</duration></forward>"))));
    }

    @Test
    void wholeMeasureRestMayHaveNoDuration() {
        Tune tune = read(score(notes("D5:16"), "<note><rest measure=\"yes\"/><voice>1</voice></note>"));
        assertEquals(1, tune.events().size());
        assertEquals("0/1", tune.measures().get(1).length().toString());
    }

    @Test
    void transposedPartsAreReadAsTheySound() {
        String clarinet = "<attributes><transpose><chromatic>-2</chromatic></transpose></attributes>";
        Tune tune = read(score(clarinet + notes("E5:16")));
        assertEquals("D5*4/1", sounds(tune));
        assertEquals(-1, tune.measures().get(0).key().fifths());
        String octave = "<attributes><transpose><chromatic>0</chromatic><octave-change>-1</octave-change></transpose>"
                + "</attributes>";
        assertEquals("E4*4/1", sounds(read(score(octave + notes("E5:16")))));
    }

    @Test
    void octaveShiftChangesNothing() {
        String shift =
                "<direction><direction-type><octave-shift type=\"down\" size=\"8\"/></direction-type></direction>";
        assertEquals("D6*4/1", sounds(read(score(shift + notes("D6:16")))));
    }

    @Test
    void overlappingNotesOfOneVoiceAreCut() {
        String back = "<backup><duration>4</duration></backup>";
        assertEquals(
                "D5*1/1 E5*1/1 r*2/1",
                sounds(read(score(notes("D5:8") + back + notes("E5:4") + "<forward><duration>8</duration></forward>")
                        .replace("</duration></note>", "</duration><voice>1</voice></note>"))));
    }

    @Test
    void accidentalsMayBeDouble() {
        String note =
                "<note><pitch><step>F</step><alter>2</alter><octave>4</octave></pitch><duration>16</duration></note>";
        assertEquals("G4*4/1", sounds(read(score(note))));
    }

    @Test
    void onlyPlayedMeasuresHaveEvents() {
        String fine = "<direction><direction-type><words>Fine</words></direction-type></direction>";
        String daCapo = "<direction><direction-type><words>D.C. al Fine</words></direction-type></direction>";
        Tune tune = read(score(notes("D5:16") + fine, notes("E5:16") + daCapo, notes("F5:16")));
        assertEquals("1-2, 1", tune.playOrder().shortForm());
        assertEquals("D5*4/1 E5*4/1", sounds(tune));
        assertTrue(tune.diagnostics().toString().contains("never reaches measure 3"));
    }

    @Test
    void quarterToneIsSoundedByNoButton() {
        String quarter = ScoreText.note("F#5:16", "").replace("<alter>1</alter>", "<alter>0.5</alter>");
        Diagnostic refusal = ScoreText.refusal(score(quarter));
        assertEquals(DiagnosticCode.NO_BUTTON, refusal.code());
        assertEquals("No button sounds quarter tones: F5 is raised by 0.5 semitones.", refusal.text());
    }

    @Test
    void slashNoteHeadsAreLeftOutAndSaidToBe() {
        Tune tune =
                read(score(ScoreText.note("B4:4", "<notehead>slash</notehead>").repeat(2) + notes("D5:8")));
        assertEquals("r*2/1 D5*2/1", sounds(tune));
        assertEquals(
                List.of("2 notes of the melody have slash heads: they show a rhythm, not a pitch, and are left out."),
                ScoreText.remarks(tune, DiagnosticCode.ASSUMED).stream()
                        .filter(text -> text.contains("slash"))
                        .toList());
    }
}
