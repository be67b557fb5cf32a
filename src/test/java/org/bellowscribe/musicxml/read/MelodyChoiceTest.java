package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.ScoreText.ATTRIBUTES;
import static org.bellowscribe.musicxml.read.ScoreText.note;
import static org.bellowscribe.musicxml.read.ScoreText.notes;
import static org.bellowscribe.musicxml.read.ScoreText.part;
import static org.bellowscribe.musicxml.read.ScoreText.read;
import static org.bellowscribe.musicxml.read.ScoreText.refusal;
import static org.bellowscribe.musicxml.read.ScoreText.score;
import static org.bellowscribe.musicxml.read.ScoreText.sounds;
import static org.bellowscribe.musicxml.read.ScoreText.wrap;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.score.Tune;
import org.junit.jupiter.api.Test;

class MelodyChoiceTest {

    private static final String BACK = "<backup><duration>16</duration></backup>";
    private static final String CHORDS = part("P1", ATTRIBUTES + notes("D3:8 +A3:8 D3:8 +A3:8"));
    private static final String LEAD = part("P2", ATTRIBUTES + notes("D5:8 E5:8"));

    private static String voiced(String word, int voice, int staff) {
        return note(word, "<voice>" + voice + "</voice><staff>" + staff + "</staff>");
    }

    @Test
    void singleLineComesBeforeAccompaniment() {
        Tune tune = read(wrap(CHORDS + LEAD));
        assertEquals("P2", tune.part());
        assertEquals(List.of(4), tune.events().get(0).noteIndices());
    }

    @Test
    void choiceIsRemarked() {
        assertTrue(read(wrap(CHORDS + LEAD))
                .diagnostics()
                .toString()
                .contains(
                        "The melody is read from part P2, staff 1, voice 1, because of its range and its single notes; the"
                                + " score has 2 parts with notes."));
    }

    @Test
    void partMayBeNamed() {
        assertEquals(
                "P1",
                read(wrap(CHORDS + LEAD), new ReadingOptions("P1", null, null)).part());
    }

    @Test
    void unknownPartIsRefusedWithTheNamesOfTheOthers() {
        var refusal = refusal(wrap(CHORDS + LEAD), new ReadingOptions("P9", null, null));
        assertEquals("The score has no part P9.", refusal.text());
        assertEquals(List.of("The score has these parts: P1, P2."), refusal.advice());
    }

    @Test
    void partOfAFewNotesIsNoMelody() {
        String chime = part("P1", ATTRIBUTES + notes("D6:16"));
        String lead = part("P2", ATTRIBUTES + notes("D5:1 E5:1 D5:1 E5:1 D5:1 E5:1 D5:1 E5:1 D5:1 E5:1 D5:1 E5:4"));
        assertEquals("P2", read(wrap(chime + lead)).part());
    }

    @Test
    void highestVoiceOfTheFirstStaffIsTheMelody() {
        String piano = voiced("D4:16", 2, 1) + BACK + voiced("D5:16", 1, 1) + BACK + voiced("D6:16", 5, 2);
        assertEquals("D5*4/1", sounds(read(score(piano))));
    }

    @Test
    void staffAndVoiceMayBeNamed() {
        String piano = voiced("D5:16", 1, 1) + BACK + voiced("D4:16", 2, 1) + BACK + voiced("D3:16", 5, 2);
        assertEquals("D3*4/1", sounds(read(score(piano), new ReadingOptions(null, 2, null))));
        assertEquals("D4*4/1", sounds(read(score(piano), new ReadingOptions(null, null, "2"))));
        assertEquals(
                DiagnosticCode.UNKNOWN_NAME,
                refusal(score(piano), new ReadingOptions(null, null, "9")).code());
    }

    @Test
    void unknownStaffOrVoiceIsRefusedWithThoseThereAre() {
        String piano = voiced("D5:16", 1, 1) + BACK + voiced("D4:16", 2, 1) + BACK + voiced("D3:16", 5, 2);
        var voice = refusal(score(piano), new ReadingOptions(null, null, "9"));
        assertEquals("The score has no notes in voice 9.", voice.text());
        assertEquals(
                List.of("Part P1 has notes in staff 1, voice 1; staff 1, voice 2; staff 2, voice 5."), voice.advice());
        var staff = refusal(score(piano), new ReadingOptions("P1", 3, "1"));
        assertEquals("Part P1 (Tune) has no notes in staff 3, voice 1.", staff.text());
    }

    @Test
    void partMayBeCalledByItsNameOrItsPlace() {
        String list = "<part-list><score-part id=\"P1\"><part-name>Piano</part-name></score-part>"
                + "<score-part id=\"P2\"><part-name>Tin Whistle</part-name></score-part></part-list>";
        String score = wrap(CHORDS + LEAD).replace("<part id=\"P1\">", list + "<part id=\"P1\">");
        assertEquals("P1", read(score, new ReadingOptions("piano", null, null)).part());
        assertEquals("P2", read(score, new ReadingOptions("2", null, null)).part());
        var refusal = refusal(score, new ReadingOptions("tin wistle", null, null));
        assertEquals("The score has no part tin wistle.", refusal.text());
        assertEquals(
                List.of("Maybe P2 (Tin Whistle).", "The score has these parts: P1 (Piano), P2 (Tin Whistle)."),
                refusal.advice());
    }

    @Test
    void nameOfTwoPartsIsNoChoice() {
        String list = "<part-list><score-part id=\"P1\"><part-name>Voice</part-name></score-part>"
                + "<score-part id=\"P2\"><part-name>Voice</part-name></score-part></part-list>";
        String score = wrap(CHORDS + LEAD).replace("<part id=\"P1\">", list + "<part id=\"P1\">");
        assertEquals(
                "The score has 2 parts called Voice.",
                refusal(score, new ReadingOptions("Voice", null, null)).text());
    }

    @Test
    void melodyMayCrossToTheOtherStaff() {
        String piano = voiced("D5:8", 1, 1) + voiced("A3:8", 1, 2);
        assertEquals("D5*2/1 A3*2/1", sounds(read(score(piano))));
    }

    @Test
    void highVoiceOfAFewNotesIsNoMelody() {
        String descant = voiced("D6:16", 2, 1);
        String melody = voiced("D5:2", 1, 1).repeat(8);
        assertEquals(8, read(score(melody + BACK + descant)).events().size());
    }

    @Test
    void otherVoiceStandsInWhereTheMelodyIsNotWritten() {
        String first = voiced("D5:4", 1, 1).repeat(4);
        assertEquals("D5*1/1 D5*1/1 D5*1/1 D5*1/1 A4*4/1", sounds(read(score(first, voiced("A4:16", 2, 1)))));
        assertEquals(
                "D5*1/1 D5*1/1 D5*1/1 D5*1/1 r*4/1",
                sounds(read(score(first, voiced("r:16", 1, 1) + BACK + voiced("A4:16", 2, 1)))));
    }

    @Test
    void percussionIsNoMelody() {
        String clef = "<attributes><clef><sign>percussion</sign></clef></attributes>";
        assertEquals(
                "P2",
                read(wrap(part("P1", ATTRIBUTES + clef + notes("D5:8 E5:8")) + LEAD))
                        .part());
        assertEquals(
                "The score has no melody: it holds only percussion, cue notes or slashes.",
                refusal(score(clef + notes("D5:16"))).text());
    }

    @Test
    void scoreOfRestsHasNothingToPlay() {
        var refusal = refusal(score(notes("r:16")));
        assertEquals(DiagnosticCode.NO_NOTES, refusal.code());
        assertEquals("The score has no melody: it holds only rests.", refusal.text());
        assertEquals(
                "The score has no melody: it holds no notes at all.",
                refusal(score("")).text());
        assertEquals(
                "The score has no melody: it holds no notes at all.",
                refusal(wrap("")).text());
    }

    @Test
    void voicesOfOneNameOnTwoStavesAreTwoVoices() {
        String piano = voiced("D5:8", 1, 1) + voiced("E5:8", 1, 1) + BACK + voiced("D3:16", 1, 2);
        assertEquals("D5*2/1 E5*2/1", sounds(read(score(piano))));
    }
}
