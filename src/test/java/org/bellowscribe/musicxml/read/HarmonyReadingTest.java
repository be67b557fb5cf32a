package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.ScoreText.notes;
import static org.bellowscribe.musicxml.read.ScoreText.read;
import static org.bellowscribe.musicxml.read.ScoreText.remarks;
import static org.bellowscribe.musicxml.read.ScoreText.score;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.audiveris.proxymusic.KindValue;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.score.Harmony;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.ChordSymbol;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HarmonyReadingTest {

    private static String harmony(String root, String kind, String more) {
        String alter = root.endsWith("#")
                ? "<root-alter>1</root-alter>"
                : root.endsWith("b") ? "<root-alter>-1</root-alter>" : "";
        return "<harmony><root><root-step>" + root.charAt(0) + "</root-step>" + alter + "</root><kind>" + kind
                + "</kind>" + more + "</harmony>";
    }

    private static String degree(int value, int alter, String type) {
        return "<degree><degree-value>" + value + "</degree-value><degree-alter>" + alter
                + "</degree-alter><degree-type>" + type + "</degree-type></degree>";
    }

    private static ChordSymbol chord(String harmony) {
        List<Harmony> harmonies = read(score(harmony + notes("D5:16"))).harmonies();
        assertEquals(1, harmonies.size());
        ChordSymbol chord = harmonies.get(0).chord();
        assertNotNull(chord);
        return chord;
    }

    @ParameterizedTest
    @CsvSource({
        "G, major, '[D, G, B]'",
        "E, minor, '[E, G, B]'",
        "A, dominant, '[C#, E, G, A]'",
        "C#, diminished, '[C#, E, G]'",
        "B, half-diminished, '[D, F, A, B]'",
        "F, augmented, '[C#, F, A]'",
        "D, suspended-fourth, '[D, G, A]'",
        "D, suspended-second, '[D, E, A]'",
        "D, power, '[D, A]'",
        "D, pedal, '[D]'",
        "C, dominant-13th, '[C, D, E, F, G, A, Bb]'",
        "Bb, major-sixth, '[D, F, G, Bb]'"
    })
    void kindGivesTheTones(String root, String kind, String tones) {
        assertEquals(tones, chord(harmony(root, kind, "")).tones().toString());
    }

    @Test
    void everyKindHasTonesWithItsRoot() {
        for (KindValue kind : KindValue.values()) {
            assertTrue(kind == KindValue.NONE || KindTones.of(kind).contains(0), kind.value());
        }
    }

    @Test
    void bassIsTheLowestNote() {
        String bass = "<bass><bass-step>F</bass-step><bass-alter>1</bass-alter></bass>";
        assertEquals("F#", chord(harmony("D", "major", bass)).bass().toString());
    }

    @Test
    void inversionPutsThirdOrFifthLowest() {
        assertEquals(
                "B",
                chord(harmony("G", "major", "<inversion>1</inversion>")).bass().toString());
        assertEquals(
                "D",
                chord(harmony("G", "major", "<inversion>2</inversion>")).bass().toString());
    }

    @Test
    void degreesChangeTheChord() {
        assertEquals(
                "[D, G, A, B]",
                chord(harmony("G", "major", degree(9, 0, "add"))).tones().toString());
        assertEquals(
                "[Eb, F, G, B]",
                chord(harmony("G", "dominant", degree(5, 1, "alter"))).tones().toString());
        assertEquals(
                "[D, G]",
                chord(harmony("G", "major", degree(3, 0, "subtract"))).tones().toString());
        assertEquals(
                "[D, F, G, B]",
                chord(harmony("G", "major", degree(7, 0, "add"))).tones().toString());
    }

    @Test
    void otherKindMaySayByItsTextWhatItIs() {
        String text = harmony("G", "other", "").replace("<kind>", "<kind text=\"sus4\">");
        assertEquals("[C, D, G]", chord(text).tones().toString());
    }

    @Test
    void noneIsNoChord() {
        List<Harmony> harmonies =
                read(score(harmony("G", "none", "") + notes("D5:16"))).harmonies();
        assertNull(harmonies.get(0).chord());
    }

    @Test
    void numeralNeedsTheKey() {
        String five = "<harmony><numeral><numeral-root>5</numeral-root></numeral><kind>dominant</kind></harmony>";
        assertEquals("D", chord(five).root().toString());
        String fiveOfTwo = "<harmony><numeral><numeral-root>5</numeral-root></numeral><kind>major</kind>"
                + "<numeral><numeral-root>2</numeral-root></numeral><kind>minor</kind></harmony>";
        assertEquals("E", chord(fiveOfTwo).root().toString());
        String inMinor =
                "<harmony><numeral><numeral-root>7</numeral-root><numeral-key><numeral-fifths>0</numeral-fifths>"
                        + "<numeral-mode>harmonic minor</numeral-mode></numeral-key></numeral><kind>diminished</kind></harmony>";
        assertEquals("G#", chord(inMinor).root().toString());
    }

    @ParameterizedTest
    @CsvSource({"I, G", "IV, C", "ii, A", "bVII, F", "V7, D", "vii\u00b0, F#", "V/V, A"})
    void functionIsReadAsARomanNumeral(String function, String root) {
        assertEquals(
                root,
                chord("<harmony><function>" + function + "</function><kind>major</kind></harmony>")
                        .root()
                        .toString());
    }

    @Test
    void functionThatIsNotUnderstoodIsRemarked() {
        Tune tune = read(score("<harmony><function>Tp</function><kind>minor</kind></harmony>" + notes("D5:16")));
        assertEquals(0, tune.harmonies().size());
        assertEquals(1, remarks(tune, DiagnosticCode.ODD_VALUE).size());
    }

    @Test
    void ofSeveralAtOneMomentTheFirstCounts() {
        Tune tune = read(score(harmony("G", "major", "") + harmony("C", "major", "") + notes("D5:16")));
        assertEquals("G", String.valueOf(tune.harmonies().get(0).chord()));
        assertEquals(1, tune.harmonies().size());
    }

    @Test
    void offsetMovesAChord() {
        Tune tune = read(score(harmony("G", "major", "<offset>8</offset>") + notes("D5:16")));
        assertEquals("2/1", tune.harmonies().get(0).onset().toString());
    }

    @Test
    void chordAtTheEndOfAMeasureBelongsToTheNext() {
        Tune tune = read(score(notes("D5:16") + harmony("G", "major", ""), notes("D5:16")));
        assertEquals(1, tune.harmonies().get(0).measure());
        assertEquals("0/1", tune.harmonies().get(0).onset().toString());
    }

    @Test
    void chordsOfATransposedPartSoundTransposed() {
        String clarinet = "<attributes><transpose><chromatic>-2</chromatic></transpose></attributes>";
        assertEquals("G", chord(clarinet + harmony("A", "major", "")).root().toString());
    }

    @Test
    void chordsMayStandInAnotherPart() {
        String lead = ScoreText.part("P1", ScoreText.ATTRIBUTES + notes("D5:16"));
        String bass = ScoreText.part("P2", ScoreText.ATTRIBUTES + harmony("G", "major", "") + notes("G3:16 +B3:16"));
        assertEquals(
                "G",
                String.valueOf(
                        read(ScoreText.wrap(lead + bass)).harmonies().get(0).chord()));
    }

    @Test
    void wordsThatReadLikeChordsAreTakenForThem() {
        String words = "<direction><direction-type><words>(Bm)</words></direction-type></direction>";
        Tune tune = read(score(words + notes("D5:16")));
        assertEquals("Bm", String.valueOf(tune.harmonies().get(0).chord()));
        assertEquals(
                "The score has no chord symbols; 1 words that read like chords are taken for them.",
                remarks(tune, DiagnosticCode.ASSUMED).get(0));
    }

    @Test
    void lettersOfSectionsAreNoChords() {
        String a = "<direction><direction-type><words>A</words></direction-type></direction>";
        Tune tune = read(score(
                a + notes("D5:16"),
                notes("D5:16"),
                notes("D5:16"),
                a.replace("A", "B") + notes("D5:16"),
                notes("D5:16"),
                notes("D5:16")));
        assertEquals(List.of(), tune.harmonies());
    }

    @Test
    void symbolWithAnEmptyKindIsPassedOver() {
        Tune tune = read(score(harmony("G", "", "") + notes("D5:8") + harmony("D", "major", "") + notes("D5:8")));
        assertEquals(1, tune.harmonies().size());
        assertEquals(
                List.of("A chord symbol has an empty kind; it is passed over."),
                remarks(tune, DiagnosticCode.ODD_VALUE));
    }

    private static String bars(int count, String before) {
        return before + notes("D5:16") + ("</measure><measure>" + notes("D5:16")).repeat(count - 1);
    }

    private static List<String> unwritten(Tune tune) {
        return tune.harmonies().stream()
                .filter(Harmony::unwritten)
                .map(harmony -> String.valueOf(harmony.measure() + 1))
                .toList();
    }

    @Test
    void sectionWithoutSymbolsIsUnwritten() {
        String doubleBar = "<barline location=\"right\"><bar-style>light-light</bar-style></barline>";
        Tune tune = read(score(bars(4, harmony("G", "major", "")) + doubleBar, bars(4, "")));
        assertEquals(List.of("5"), unwritten(tune));
        assertTrue(remarks(tune, DiagnosticCode.ASSUMED)
                .contains("The score has no chord symbols in measures 5-8; a harmony is found there."));
    }

    @Test
    void measuresBeforeTheFirstSymbolAreUnwritten() {
        assertEquals(List.of("1"), unwritten(read(score(bars(4, ""), bars(4, harmony("G", "major", ""))))));
    }

    @Test
    void symbolHoldsForAPhraseOfEightMeasures() {
        assertEquals(List.of(), unwritten(read(score(bars(8, harmony("G", "major", ""))))));
        assertEquals(List.of("9"), unwritten(read(score(bars(12, harmony("G", "major", ""))))));
        assertEquals(List.of(), unwritten(read(score(bars(12, harmony("G", "none", ""))))));
    }

    @Test
    void twoWordsAreNotTheHarmonyOfATune() {
        String words = "<direction><direction-type><words>(F)</words></direction-type></direction>";
        assertEquals(List.of(), read(score(bars(8, words), bars(8, words))).harmonies());
        assertEquals(2, read(score(bars(4, words), bars(4, words))).harmonies().size());
    }
}
