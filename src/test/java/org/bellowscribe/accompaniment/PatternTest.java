package org.bellowscribe.accompaniment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.bellowscribe.accompaniment.pattern.PatternLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tempo;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the patterns of the library play: a stroke is {@code bass} or {@code chord} and its place in quarters from 0. */
class PatternTest {

    private static TimeSignature time(String text) {
        String[] numbers = text.split("/");
        return new TimeSignature(Integer.parseInt(numbers[0]), Integer.parseInt(numbers[1]));
    }

    private static String strokes(Pattern pattern, String time) {
        return pattern.strokes(time(time)).stream()
                .map(stroke -> stroke.kind().label() + " " + stroke.onset().toDouble())
                .collect(Collectors.joining(", "));
    }

    private static Measure measure(String number, String time) {
        Key key = new Key(2, Mode.MAJOR);
        TimeSignature signature = time(time);
        return new Measure(0, number, signature.measureLength(), Fraction.ZERO, signature, key);
    }

    private static Pattern usual(String time, double quartersPerMinute) {
        return PatternLibrary.usual().of(measure("1", time), new Tempo(quartersPerMinute, true));
    }

    /** S7 "Big Nick", S18 "Bellows and Strings", W027 (tunes2play4fun.com): see the files of the patterns. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2/4 | bass 0.0, chord 1.0",
                "3/4 | bass 0.0, chord 1.0, chord 2.0",
                "4/4 | bass 0.0, chord 1.0, bass 2.0, chord 3.0",
                "2/2 | bass 0.0, chord 1.0, bass 2.0, chord 3.0",
                "3/2 | bass 0.0, chord 1.0, bass 2.0, chord 3.0, bass 4.0, chord 5.0",
                "6/4 | bass 0.0, chord 1.0, chord 2.0, bass 3.0, chord 4.0, chord 5.0",
                "6/8 | bass 0.0, chord 1.5",
                "9/8 | bass 0.0, chord 1.5, chord 3.0",
                "5/4 | bass 0.0, chord 1.0, bass 2.0, chord 3.0, bass 4.0"
            })
    void usualPatternFollowsTheTime(String time, String strokes) {
        assertEquals(strokes, strokes(usual(time, 120), time));
    }

    @Test
    void quickReelHasHalfTheStrokes() {
        assertEquals("bass 0.0, chord 2.0", strokes(usual("2/2", 232), "2/2"));
        assertEquals("bass-chord", usual("2/2", 208).id());
    }

    @Test
    void jigHasItsChordOnTheThirdEighth() throws DiagnosedException {
        assertEquals("bass 0.0, chord 1.0, bass 1.5, chord 2.5", strokes(PatternLibrary.find("jig"), "6/8"));
    }

    @Test
    void alternatingBassHasTheFifth() throws DiagnosedException {
        List<ChordTone> tones = PatternLibrary.find("alternating-bass").strokes(time("4/4")).stream()
                .map(Pattern.Stroke::tone)
                .toList();
        assertEquals(List.of(ChordTone.ROOT, ChordTone.ROOT, ChordTone.FIFTH, ChordTone.ROOT), tones);
    }

    @Test
    void sustainedStrokesEndWithTheMeasure() throws DiagnosedException {
        PatternLibrary.find("sustained")
                .strokes(time("3/4"))
                .forEach(stroke -> assertEquals(Fraction.of(3, 1), stroke.duration()));
    }

    @Test
    void measuresCountBeforeTimesAndTimesBeforeTheRest() throws DiagnosedException {
        PatternChoice choice = new PatternChoice(
                PatternLibrary.all(),
                List.of(
                        new PatternChoice.Named(PatternLibrary.find("sustained"), null, 17, 24),
                        new PatternChoice.Named(PatternLibrary.find("bass-run"), "3/4", 0, 0),
                        new PatternChoice.Named(PatternLibrary.find("off-beat"), null, 0, 0)));
        Tempo tempo = new Tempo(120, true);
        assertEquals("sustained", choice.of(measure("20", "3/4"), tempo).id());
        assertEquals("bass-run", choice.of(measure("25", "3/4"), tempo).id());
        assertEquals("off-beat", choice.of(measure("25", "4/4"), tempo).id());
    }

    @Test
    void whatTheUserNamesGoesBeforeThePatternsOfTheManner() throws DiagnosedException {
        PatternChoice.Named manner = new PatternChoice.Named(PatternLibrary.find("three-basses-chord"), "4/4", 0, 0);
        PatternChoice.Named user = new PatternChoice.Named(PatternLibrary.find("sustained"), null, 17, 24);
        PatternChoice choice = new PatternChoice(PatternLibrary.all(), List.of(user)).inManner(List.of(manner));
        Tempo tempo = new Tempo(120, true);
        assertEquals("sustained", choice.of(measure("17", "4/4"), tempo).id());
        assertEquals(
                "three-basses-chord", choice.of(measure("16", "4/4"), tempo).id());
        assertEquals("bass-chord", choice.of(measure("16", "2/4"), tempo).id());
    }
}
