package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.ScoreText.bare;
import static org.bellowscribe.musicxml.read.ScoreText.notes;
import static org.bellowscribe.musicxml.read.ScoreText.read;
import static org.bellowscribe.musicxml.read.ScoreText.remarks;
import static org.bellowscribe.musicxml.read.ScoreText.score;
import static org.bellowscribe.musicxml.read.ScoreText.sounds;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasureReadingTest {

    private static String time(String inside) {
        return "<attributes><divisions>4</divisions><time>" + inside + "</time></attributes>";
    }

    private static Measure first(String attributes, String notes) {
        return read(bare(attributes + notes(notes))).measures().get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "<beats>6</beats><beat-type>8</beat-type>, 6/8",
        "<beats>3+2</beats><beat-type>8</beat-type>, 5/8",
        "<beats>3</beats><beat-type>8</beat-type><beats>2</beats><beat-type>4</beat-type>, 7/8",
        "<beats>2</beats><beat-type>2</beat-type>, 2/2",
        "<beats> 3 </beats><beat-type>4</beat-type>, 3/4"
    })
    void timeSignatureIsRead(String inside, String expected) {
        assertEquals(expected, first(time(inside), "D5:4").time().toString());
    }

    @Test
    void timeMayChange() {
        String three = time("<beats>3</beats><beat-type>4</beat-type>");
        Tune tune = read(score(notes("D5:16"), three + notes("D5:12"), notes("D5:12")));
        assertEquals("4/4", tune.measures().get(0).time().toString());
        assertEquals("3/4", tune.measures().get(2).time().toString());
    }

    @Test
    void newTimeInMidMeasureHoldsFromTheNextMeasure() {
        String three = time("<beats>3</beats><beat-type>4</beat-type>");
        Tune tune = read(score(notes("D5:16") + three, notes("D5:12")));
        assertEquals("4/4", tune.measures().get(0).time().toString());
        assertEquals("3/4", tune.measures().get(1).time().toString());
    }

    @Test
    void missingTimeIsWhatMostMeasuresFill() {
        String divisions = "<attributes><divisions>4</divisions></attributes>";
        Tune tune = read(bare(divisions + notes("D5:4"), notes("D5:12"), notes("D5:12")));
        assertEquals("3/4", tune.measures().get(0).time().toString());
        assertEquals(2, tune.measures().get(0).beatOffset().numerator());
        assertEquals(
                "The score has no time signature; it is read as 3/4.",
                remarks(tune, DiagnosticCode.ASSUMED).get(0));
    }

    @Test
    void missingTimeWithDottedQuartersIsCompound() {
        String divisions = "<attributes><divisions>4</divisions></attributes>";
        assertEquals("6/8", first(divisions, "D5:6 E5:6").time().toString());
    }

    @Test
    void freeMeasureIsNeverAPickUp() {
        Measure measure = first(time("<senza-misura/>"), "D5:4");
        assertEquals("0/1", measure.beatOffset().toString());
        assertEquals("1/1", measure.length().toString());
    }

    @Test
    void pickUpIsKnownByItsLength() {
        Tune tune = read(score(notes("D5:4"), notes("D5:16"), notes("D5:12")));
        assertEquals("3/1", tune.measures().get(0).beatOffset().toString());
        assertEquals("0/1", tune.measures().get(2).beatOffset().toString());
    }

    @Test
    void shortMeasureAfterADoubleBarIsAPickUp() {
        String bar = "<barline><bar-style>light-light</bar-style></barline>";
        Tune tune = read(score(notes("D5:16") + bar, notes("D5:4"), notes("D5:16")));
        assertEquals("3/1", tune.measures().get(1).beatOffset().toString());
    }

    @Test
    void anotherPartFillsTheMeasure() {
        String lead = ScoreText.part("P1", ScoreText.ATTRIBUTES + notes("D5:4"));
        String bass = ScoreText.part("P2", ScoreText.ATTRIBUTES + notes("D3:8 +A3:8 D3:8 +A3:8"));
        assertEquals("D5*1/1 r*3/1", sounds(read(ScoreText.wrap(lead + bass))));
    }

    @Test
    void missingDivisionsAreFoundByThePrintedShape() {
        String note =
                "<note><pitch><step>D</step><octave>5</octave></pitch><duration>24</duration><type>half</type></note>";
        Tune tune = read(bare(note + note));
        assertEquals("D5*2/1 D5*2/1", sounds(tune));
        assertEquals(
                "Part P1 gives no divisions before its first note; a quarter note is read as 12 of them.",
                remarks(tune, DiagnosticCode.ASSUMED).stream()
                        .filter(each -> each.startsWith("Part"))
                        .findFirst()
                        .orElse(""));
    }

    @Test
    void modeIsGuessedFromTheLastNotePlayed() {
        String key = "<attributes><divisions>4</divisions><key><fifths>1</fifths></key></attributes>";
        Tune tune = read(bare(key + notes("G5:8 E5:8")));
        assertEquals("E", tune.measures().get(0).key().tonic().toString());
    }

    @Test
    void keyMayChange() {
        String two = "<attributes><key><fifths>2</fifths><mode>mixolydian</mode></key></attributes>";
        Tune tune = read(score(notes("D5:16"), two + notes("D5:16")));
        assertEquals("G", tune.measures().get(0).key().tonic().toString());
        assertEquals("A", tune.measures().get(1).key().tonic().toString());
    }
}
