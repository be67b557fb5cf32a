package org.bellowscribe.annotation.mark;

import static org.bellowscribe.instrument.BellowsDirection.PUSH;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Sketch;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.score.Harmony;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

class ChordSymbolsTest {

    private static String symbols(Arrangement arrangement) {
        return new ChordSymbols()
                .marks(arrangement).stream()
                        .map(mark -> mark.event() + " " + ((Mark.Symbol) mark).name())
                        .collect(Collectors.joining(", "));
    }

    private static String symbols(Sketch sketch) {
        return symbols(sketch.arrangement());
    }

    private static Sketch bassAndChord(String bass, String chord, Third third) {
        return new Sketch(1).push("1.3").bass(bass).push("1.3").chord(chord, third);
    }

    @Test
    void aSymbolStandsWhereTheSoundChanges() {
        Sketch sketch = bassAndChord("G", "G", Third.MAJOR)
                .push("1.3")
                .bass("G")
                .push("1.3")
                .chord("G", Third.MAJOR)
                .push("1.3")
                .bass("E")
                .push("1.3")
                .chord("E", Third.MINOR);
        assertEquals("0 G, 4 Em", symbols(sketch));
    }

    /** S18: "Bellows and Strings": A minor is played as the bass A and the chord of C. */
    @Test
    void aCrossChordNamesItsBass() {
        assertEquals("0 C/A", symbols(bassAndChord("A", "C", Third.MAJOR)));
    }

    @Test
    void aChordWithoutThirdIsNoMajorChord() {
        assertEquals("0 G5", symbols(bassAndChord("G", "G", Third.NONE)));
    }

    @Test
    void anAlternatingFifthChangesNothing() {
        Sketch sketch = bassAndChord("G", "G", Third.MAJOR)
                .push("1.3")
                .bass("D")
                .push("1.3")
                .chord("G", Third.MAJOR);
        assertEquals("0 G", symbols(sketch));
        assertEquals("0 G/D", symbols(bassAndChord("D", "G", Third.MAJOR)));
    }

    @Test
    void aBassAloneStandsForTheHarmonyThatIsMeant() {
        assertEquals(
                "0 G, 1 D",
                symbols(new Sketch(1)
                        .push("1.3")
                        .bass("G")
                        .push("1.3")
                        .bass("D")
                        .rest(PUSH)));
    }

    @Test
    void theFirstSymbolOfASectionIsSaidAgain() {
        Sketch sketch = new Sketch(1)
                .push("1.3")
                .bass("G")
                .measure()
                .push("1.3")
                .bass("G")
                .order(1, 2, 2);
        assertEquals("0 G, 1 G", symbols(sketch));
    }

    @Test
    void aSymbolMayComeWhileANoteSounds() {
        Sketch sketch = new Sketch(1)
                .push("1.3")
                .bass("G")
                .left(Fraction.of(1, 2), LeftHandSound.chord(PitchClass.parse("C"), Third.MAJOR))
                .left(Fraction.of(3, 4), LeftHandSound.chord(PitchClass.parse("D"), Third.MAJOR));
        List<Mark> marks = new ChordSymbols().marks(sketch.arrangement());
        assertEquals("0 C/G, 0 D", symbols(sketch));
        assertEquals(Fraction.of(3, 4), ((Mark.Symbol) marks.get(1)).offset());
    }

    @Test
    void aSheetThatKeepsItsNotesHasTheSymbolsOfItsKey() {
        Arrangement plain = bassAndChord("A", "A", Third.MAJOR).arrangement();
        Arrangement kept = new Arrangement(plain.tune(), plain.instrument(), plain.solution(), plain.style(), 2);
        assertEquals("0 G", symbols(kept));
    }

    @Test
    void aScoreThatHasChordSymbolsKeepsItsOwn() {
        Arrangement plain = bassAndChord("G", "G", Third.MAJOR).arrangement();
        Tune tune = plain.tune();
        Tune own = new Tune(
                tune.title(),
                tune.part(),
                tune.measures(),
                tune.events(),
                List.of(new Harmony(0, Fraction.ZERO, ChordSymbol.major(PitchClass.parse("G")))),
                tune.tempo(),
                tune.playOrder(),
                List.of());
        assertEquals("", symbols(new Arrangement(own, plain.instrument(), plain.solution(), plain.style())));
    }

    @Test
    void theLegendShowsTheFirst() {
        assertEquals(
                List.of("C/A: what the left hand sounds, for others who play along"),
                Texts.legend(
                        new ChordSymbols(), bassAndChord("A", "C", Third.MAJOR).arrangement()));
    }
}
