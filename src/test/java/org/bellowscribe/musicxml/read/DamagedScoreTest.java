package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.ScoreText.note;
import static org.bellowscribe.musicxml.read.ScoreText.notes;
import static org.bellowscribe.musicxml.read.ScoreText.read;
import static org.bellowscribe.musicxml.read.ScoreText.refusal;
import static org.bellowscribe.musicxml.read.ScoreText.remarks;
import static org.bellowscribe.musicxml.read.ScoreText.score;
import static org.bellowscribe.musicxml.read.ScoreText.sounds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.Tune;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DamagedScoreTest {

    private static final String GOOD = score(notes("D5:8 E5:8"), notes("F#5:16"));

    @Test
    void textThatIsNotXmlIsRefusedWithItsPlace() {
        Diagnostic refusal = refusal("<score-partwise>\n  <part></measure>");
        assertEquals(DiagnosticCode.NOT_XML, refusal.code());
        assertEquals(2, refusal.place().line());
        assertTrue(refusal.place().column() > 0);
    }

    @Test
    void fileThatWasCutOffIsRefused() {
        for (int length = 1; length < GOOD.length() - 1; length += 7) {
            DiagnosticCode code = refusal(GOOD.substring(0, length)).code();
            assertEquals(DiagnosticCode.NOT_XML, code, "cut at " + length);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  \n", "\uFEFF"})
    void emptyTextIsRefused(String text) {
        assertEquals(DiagnosticCode.EMPTY_FILE, refusal(text).code());
    }

    @Test
    void otherRootIsNamed() {
        Diagnostic refusal = refusal("<opus><title>Book</title></opus>");
        assertEquals(DiagnosticCode.NOT_MUSICXML, refusal.code());
        assertEquals("The root element is <opus>; a score has <score-partwise> or <score-timewise>.", refusal.text());
    }

    @ParameterizedTest
    @CsvSource({
        "<octave>5</octave>, <octave>x</octave>, octave, x",
        "<octave>5</octave>, <octave>12</octave>, octave, 12",
        "<step>E</step>, <step>H</step>, step, H",
        "<duration>8</duration>, <duration>long</duration>, duration, long",
        "<duration>8</duration>, <duration>-8</duration>, duration, -8",
        "<divisions>4</divisions>, <divisions>four</divisions>, divisions, four",
        "<octave>5</octave>, <alter>sharp</alter><octave>5</octave>, alter, sharp"
    })
    void vitalValueThatCannotBeReadRefusesTheTune(String old, String bad, String name, String value) {
        Diagnostic refusal = refusal(GOOD.replace(old, bad));
        assertEquals(DiagnosticCode.BAD_VALUE, refusal.code());
        assertEquals("The value \"%s\" of <%s> cannot be read.".formatted(value, name), refusal.text());
        assertEquals(1, refusal.place().measure());
        assertEquals("P1", refusal.place().part());
    }

    @Test
    void badValueNamesItsMeasureAndLine() {
        Place place = refusal(GOOD.replace("<step>F</step>", "<step>X</step>")).place();
        assertEquals(2, place.measure());
        assertEquals("2", place.measureNumber());
        assertTrue(place.line() > 1);
    }

    @Test
    void missingVitalValueRefusesTheTune() {
        assertEquals(
                DiagnosticCode.BAD_VALUE,
                refusal(GOOD.replace("<step>F</step>", "")).code());
        assertEquals(
                DiagnosticCode.BAD_VALUE,
                refusal(GOOD.replace("<duration>16</duration>", "")).code());
    }

    @Test
    void badChordKindRefusesTheTune() {
        String harmony = "<harmony><root><root-step>G</root-step></root><kind>happy</kind></harmony>";
        Diagnostic refusal = refusal(score(harmony + notes("D5:16")));
        assertEquals("The value \"happy\" of <kind> cannot be read.", refusal.text());
    }

    @Test
    void badValueInAnotherVoiceDoesNotMatter() {
        String other = "<backup><duration>16</duration></backup>"
                + note("D3:16", "<voice>2</voice>").replace("<octave>3", "<octave>x");
        assertEquals("D5*4/1", sounds(read(score(note("D5:16", "<voice>1</voice>") + other))));
    }

    @Test
    void badValueInAnotherPartDoesNotMatter() {
        String other =
                ScoreText.part("P2", ScoreText.ATTRIBUTES + notes("D3:16")).replace("<step>D", "<step>x");
        String lead = ScoreText.part("P1", ScoreText.ATTRIBUTES + notes("D5:8 E5:8"));
        assertEquals("D5*2/1 E5*2/1", sounds(read(ScoreText.wrap(lead + other))));
    }

    @Test
    void badDurationInAnotherVoiceRefusesBecauseTheTimesAreUnknown() {
        String other = note("D3:16", "<voice>2</voice>").replace(">16<", ">x<");
        assertEquals(
                DiagnosticCode.BAD_VALUE,
                refusal(score(note("D5:16", "<voice>1</voice>") + "<backup><duration>16</duration></backup>" + other))
                        .code());
    }

    @Test
    void oddLayoutDoesNoHarm() {
        String odd = GOOD.replace("<note>", "<note default-y=\"12px\" dynamics=\"loud\" color=\"#zz\" id=\"1\">")
                .replace("<measure ", "<measure width=\"wide\" ")
                .replace("</note>", "<stem default-y=\"?\">sideways</stem><beam number=\"99\">x</beam></note>");
        Tune tune = read(odd);
        assertEquals(sounds(read(GOOD)), sounds(tune));
        assertEquals(read(GOOD).events(), tune.events());
    }

    @Test
    void oddValueThatIsPassedOverIsRemarked() {
        Tune tune = read(GOOD.replace("<voice>1</voice>", "")
                .replace(
                        "</measure>", "<barline><repeat direction=\"backward\" times=\"often\"/></barline></measure>"));
        assertEquals(
                "The value \"often\" of <repeat@times> is not allowed there and is passed over.",
                remarks(tune, DiagnosticCode.ODD_VALUE).get(0));
        assertEquals("1, 1-2, 2", tune.playOrder().shortForm());
    }

    @Test
    void unknownElementsArePassedOver() {
        assertEquals(
                read(GOOD).events(),
                read(GOOD.replace("<duration>8", "<new><duration>1</duration></new><duration>8"))
                        .events());
    }

    @Test
    void undeclaredPrefixesAreAllowed() {
        assertEquals(
                read(GOOD).events(),
                read(GOOD.replace("<note>", "<note xlink:href=\"a\">")).events());
    }

    @Test
    void outsideEntitiesAreNotRead() {
        String doctype = "<?xml version=\"1.0\"?><!DOCTYPE score-partwise SYSTEM \"file:///no/such.dtd\" "
                + "[<!ENTITY x SYSTEM \"file:///etc/hostname\">]>";
        Tune tune = read(GOOD.replace("<?xml version=\"1.0\"?>", doctype).replace("Harvest Reel", "Harvest &x; Reel"));
        assertEquals("Harvest Reel", tune.title());
    }

    @Test
    void entitiesThatSwellAreRefused() {
        StringBuilder doctype = new StringBuilder("<!DOCTYPE score-partwise [<!ENTITY e0 \"0123456789\">");
        for (int i = 1; i < 12; i++) {
            doctype.append("<!ENTITY e")
                    .append(i)
                    .append(" \"")
                    .append(("&e" + (i - 1) + ";").repeat(10))
                    .append("\">");
        }
        String bomb = GOOD.replace("<?xml version=\"1.0\"?>", doctype + "]>").replace("Harvest Reel", "&e11;");
        assertEquals(DiagnosticCode.NOT_XML, refusal(bomb).code());
    }

    @Test
    void deepNestingIsRefused() {
        String deep = "<a>".repeat(100_000) + "</a>".repeat(100_000);
        assertEquals(
                DiagnosticCode.NOT_MUSICXML,
                refusal(GOOD.replace("</part>", deep + "</part>")).code());
    }

    @ParameterizedTest
    @ValueSource(strings = {"999999937 999999929 999999893", "10007 10009"})
    void divisionsWithoutACommonTickAreRefused(String divisions) {
        StringBuilder measure = new StringBuilder();
        for (String each : divisions.split(" ")) {
            measure.append("<attributes><divisions>").append(each).append("</divisions></attributes>");
            measure.append(notes("D5:1"));
        }
        Diagnostic refusal = refusal(score(measure.toString()));
        assertEquals(DiagnosticCode.BAD_VALUE, refusal.code());
        assertEquals("The durations of the notes do not add up in exact fractions.", refusal.text());
    }

    @Test
    void sumOfAThousandBeatsIsOdd() {
        String score = score(notes("D5:16")).replace("<beats>4", "<beats>" + "1+".repeat(100_000) + "1");
        assertTrue(read(score).diagnostics().toString().contains("of <beats> is not allowed there"));
    }

    @Test
    void ofALongTextTheBeginningIsRead() {
        String score = score(notes("D5:16")).replace("Harvest Reel", "Reel ".repeat(100_000));
        assertEquals(999, read(score).title().length());
    }

    @Test
    void melodyOfManyThousandNotesIsRefused() {
        String measure = notes("D5:4 E5:4 D5:4 E5:4");
        String[] measures = new String[1251];
        java.util.Arrays.fill(measures, measure);
        assertEquals(
                "The melody has 5004 notes and rests, and a tune may have 5000.",
                refusal(score(measures)).text());
    }

    @Test
    void noteOfYearsIsRefused() {
        var refusal = refusal(score(notes("D5:4 E5:4"), notes("r:999999999")));
        assertEquals("A note or rest lasts 250000000 quarter notes, and one may last 256.", refusal.text());
        assertEquals(2, refusal.place().measure());
    }

    @Test
    void scoreOfHundredThousandsOfNotesIsRefusedEarly() {
        assertEquals(
                "The score has more than 200000 notes and rests.",
                refusal(score("<note/>".repeat(200_001))).text());
    }

    @Test
    void pitchBeyondAllInstrumentsIsRefused() {
        assertEquals(
                DiagnosticCode.BAD_VALUE,
                refusal(GOOD.replace("<octave>5", "<alter>9</alter><octave>9")).code());
    }
}
