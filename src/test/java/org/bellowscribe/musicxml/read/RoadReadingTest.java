package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.ScoreText.notes;
import static org.bellowscribe.musicxml.read.ScoreText.read;
import static org.bellowscribe.musicxml.read.ScoreText.remarks;
import static org.bellowscribe.musicxml.read.ScoreText.score;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.score.Tune;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoadReadingTest {

    private static final String BAR = notes("D5:16");

    private static String order(String... measures) {
        return read(score(measures)).playOrder().shortForm();
    }

    private static String left(String inside) {
        return "<barline location=\"left\">" + inside + "</barline>";
    }

    private static String right(String inside) {
        return "<barline location=\"right\">" + inside + "</barline>";
    }

    private static String repeat(String direction) {
        return "<repeat direction=\"" + direction + "\"/>";
    }

    private static String ending(String number, String type) {
        return "<ending number=\"" + number + "\" type=\"" + type + "\"/>";
    }

    private static String words(String text) {
        return "<direction><direction-type><words>" + text + "</words></direction-type></direction>";
    }

    private static String sign(String name, String sound) {
        return "<direction><direction-type><" + name + "/></direction-type>" + sound + "</direction>";
    }

    @Test
    void repeatSignsStandAtTheirBarLines() {
        assertEquals("1-3, 2-4", order(BAR, left(repeat("forward")) + BAR, BAR + right(repeat("backward")), BAR));
    }

    @Test
    void repeatSignsAtTheOtherSideOfTheBarLineMeanTheSame() {
        assertEquals("1-3, 2-4", order(BAR + right(repeat("forward")), BAR, BAR, left(repeat("backward")) + BAR));
    }

    @Test
    void barLineWithoutLocationIsARightOne() {
        assertEquals("1, 1-2", order(BAR + "<barline>" + repeat("backward") + "</barline>", BAR));
    }

    @ParameterizedTest
    @CsvSource({"'1,2'", "'1, 2'", "'1-2'", "'1 2'", "'1.2.'", "'1 + 2'", "'1.-2.'"})
    void endingNumbersAreReadInManySpellings(String numbers) {
        assertEquals(
                "1-2, 1-2, 1, 3",
                order(
                        BAR,
                        left(ending(numbers, "start")) + BAR + right(ending(numbers, "stop") + repeat("backward")),
                        left(ending("3", "start")) + BAR + right(ending("3", "discontinue"))));
    }

    @Test
    void printedTextCountsWhereTheNumberSaysNothing() {
        assertEquals(List.of(1, 2), BarlineReader.numbers(" ", "1.-2."));
        assertEquals(List.of(), BarlineReader.numbers("", "Last time"));
    }

    @Test
    void soundSaysWhereToGo() {
        assertEquals(
                "1-4, 2-3, 5",
                order(
                        BAR,
                        sign("segno", "<sound segno=\"a\"/>") + BAR,
                        BAR + sign("coda", "<sound tocoda=\"c\"/>"),
                        BAR + words("D.S. al Coda").replace("</direction>", "<sound dalsegno=\"a\"/></direction>"),
                        sign("coda", "<sound coda=\"c\"/>") + BAR));
    }

    @Test
    void signsAndWordsDoWithoutSound() {
        assertEquals(
                "1-4, 2-3, 5",
                order(
                        BAR,
                        sign("segno", "") + BAR,
                        BAR + words("To Coda"),
                        BAR + words("D.S. al Coda"),
                        sign("coda", "") + BAR));
    }

    @Test
    void ofTwoCodaSignsTheFirstLeavesAndTheLastIsTheCoda() {
        assertEquals(
                "1-3, 1, 4", order(sign("coda", "") + BAR, BAR, BAR + words("D.C. al Coda"), sign("coda", "") + BAR));
    }

    @Test
    void codaSignBehindTheLastNoteLeavesAfterItsOwnMeasure() {
        String to = sign("coda", "")
                .replace("<direction>", "<direction><direction-type><words>To</words></direction-type>");
        String coda = sign("coda", "")
                .replace("</direction>", "<direction-type><words>Coda</words></direction-type></direction>");
        assertEquals("1-4, 1-2, 5", order(BAR, BAR + to, BAR, BAR + words("D.C. al Coda"), coda + BAR));
        assertEquals(
                "1-4, 1-2, 5",
                order(BAR, BAR + sign("coda", ""), BAR, BAR + words("D.C. al Coda"), sign("coda", "") + BAR));
    }

    @Test
    void ofTwoGoalsTheFirstCounts() {
        assertEquals("1-2, 1", order(BAR + words("Fine"), BAR + words("D.C. al Fine e poi la Coda")));
    }

    @Test
    void fineByWordsOrSound() {
        assertEquals("1-2, 1", order(BAR + words("Fine"), BAR + words("D.C. al Fine")));
        assertEquals("1-2, 1", order(BAR + "<sound fine=\"yes\"/>", BAR + "<sound dacapo=\"yes\"/>"));
    }

    @Test
    void wordsAndSoundInSeparateElementsCompleteEachOther() {
        assertEquals(
                "1-2, 1", order(BAR + words("Fine"), BAR + words("D.C. al Fine") + "<sound dacapo=\"yes\"/>", BAR));
        assertEquals(
                "1-3, 2",
                order(
                        "<sound segno=\"b\"/>" + BAR,
                        "<sound segno=\"a\"/>" + BAR + words("Fine"),
                        BAR + words("D.S. al Fine") + "<sound dalsegno=\"a\"/>"));
    }

    @Test
    void segnoBehindTheLastNoteBelongsToTheNextMeasure() {
        assertEquals("1-3, 2-3", order(BAR + words("Segno"), BAR, BAR + words("D.S.")));
    }

    @Test
    void segnoMayStandInTheBarLine() {
        assertEquals("1-3, 2-3", order(BAR, left("<segno/>") + BAR, BAR + words("D.S.")));
    }

    @Test
    void jumpInsideAMeasureIsTakenAtItsEndAndRemarked() {
        String inside = notes("D5:4") + words("D.C.") + notes("E5:4 F5:4 G5:4");
        assertEquals("1-2, 1-2", order(BAR, inside));
        assertEquals(
                "The D.C. stands inside measure 2; the measure is played to its end.",
                remarks(read(score(BAR, inside)), DiagnosticCode.PLAY_ORDER).get(0));
    }

    @Test
    void wordsBeforeTheLastNoteMayMeanTheBarLineButASoundDoesNot() {
        String line = notes("D5:12") + "<direction><direction-type><words>Fine</words></direction-type>%s</direction>"
                + notes("E5:4");
        Tune printed = read(score(line.formatted(""), BAR + words("D.C.")));
        Tune sounding = read(score(line.formatted("<sound fine=\"yes\"/>"), BAR + words("D.C.")));
        assertEquals("1-2, 1", printed.playOrder().shortForm());
        assertEquals("1-2, 1", sounding.playOrder().shortForm());
        assertEquals(List.of(), remarks(printed, DiagnosticCode.PLAY_ORDER));
        assertEquals(
                List.of("The fine stands inside measure 1; the measure is played to its end."),
                remarks(sounding, DiagnosticCode.PLAY_ORDER));
    }

    @Test
    void wordsSplitOverTwoElementsAreJoined() {
        String split = "<direction><direction-type><words>D.C.</words></direction-type>"
                + "<direction-type><words>al Fine</words></direction-type></direction>";
        assertEquals("1-2, 1", order(BAR + words("Fine"), BAR + split));
    }

    @Test
    void signsOfAllPartsCount() {
        String lead = ScoreText.part("P1", ScoreText.ATTRIBUTES + BAR, BAR);
        String bass = ScoreText.part("P2", ScoreText.ATTRIBUTES + BAR + right(repeat("backward")), BAR);
        assertEquals("1, 1-2", read(ScoreText.wrap(lead + bass)).playOrder().shortForm());
    }

    @Test
    void repeatInMidMeasureIsRemarked() {
        String middle =
                notes("D5:8") + "<barline location=\"middle\">" + repeat("backward") + "</barline>" + notes("E5:8");
        assertEquals("1, 1", order(middle));
        assertEquals(1, remarks(read(score(middle)), DiagnosticCode.PLAY_ORDER).size());
    }

    private static String sound(String attributes) {
        return "<sound " + attributes + "/>";
    }

    @Test
    void alFineThatStandsApartBelongsToItsDaCapo() {
        assertEquals("1-3, 1", order(BAR + words("Fine"), BAR, BAR + words("D.C.") + words("al Fine")));
        assertEquals("1-3, 1", order(BAR + words("Fine"), BAR, words("al Fine") + BAR + words("D.C.")));
    }

    @Test
    void alCodaThatStandsApartBelongsToItsJump() {
        assertEquals(
                "1-3, 1, 4",
                order(BAR + words("To Coda"), BAR, BAR + words("D.C.") + words("al Coda"), words("Coda") + BAR));
    }

    @Test
    void alFineWithoutAJumpIsRemarked() {
        String remarks = read(score(BAR, BAR + words("al Fine"))).diagnostics().toString();
        assertTrue(
                remarks.contains("The words \"al Fine\" in measure 2 belong to no jump and are passed over."), remarks);
    }

    @Test
    void soundsHoldAtTheirTimesOnly() {
        String end = BAR + right(repeat("backward"));
        assertEquals(
                "1-2, 1, 4", order(BAR + sound("tocoda=\"c\" time-only=\"2\""), end, BAR, sound("coda=\"c\"") + BAR));
        assertEquals("1-2, 1", order(BAR + sound("fine=\"yes\" time-only=\"2\""), end, BAR));
        assertEquals("1-2, 1-2, 1-3", order(BAR, BAR + sound("dacapo=\"yes\" time-only=\"1,2\""), BAR));
    }

    @Test
    void notesForSomeTimesOnlyAreRemarked() {
        String remarks = read(score(BAR.replace("<note>", "<note time-only=\"2\">")))
                .diagnostics()
                .toString();
        assertTrue(remarks.contains("for some times of playing only"), remarks);
    }

    @Test
    void departureMayBeCalledACodaByItsSound() {
        String to = words("To Coda 12").replace("</direction>", "<sound coda=\"12\"/></direction>");
        String coda = sign("coda", "<sound coda=\"12\"/>");
        assertEquals("1-4, 1-2, 5", order(BAR, BAR + to, BAR, BAR + words("D.C. al Coda"), coda + BAR));
    }

    @Test
    void ofTwoCodasOfOneLabelTheFirstIsTheDeparture() {
        String coda = sign("coda", "<sound coda=\"a\"/>");
        assertEquals("1-4, 1-2, 5", order(BAR, BAR + coda, BAR, BAR + words("D.C. al Coda"), coda + BAR));
    }

    @Test
    void departureMayNameACodaOfSeveralDigits() {
        assertEquals(
                "1-4, 1-2, 5",
                order(BAR, BAR + words("To Coda 12"), BAR, BAR + words("D.C. al Coda 12"), words("Coda 12") + BAR));
    }
}
