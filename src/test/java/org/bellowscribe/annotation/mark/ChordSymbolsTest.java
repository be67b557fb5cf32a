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

    private static Sketch together(String bass, String chord) {
        return new Sketch(1).push("1.3").bass(bass).chord(chord, Third.MAJOR);
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
    void aBassAndAChordThatSoundTogetherAreOneSymbolThatNamesTheBass() {
        assertEquals("0 C/A", symbols(together("A", "C")));
        assertEquals("0 C", symbols(together("C", "C")));
    }

    @Test
    void aBassAndTheChordAfterItAreNotOneSymbol() {
        assertEquals("0 A, 1 C", symbols(bassAndChord("A", "C", Third.MAJOR)));
        assertEquals("0 G, 1 C", symbols(bassAndChord("G", "C", Third.MAJOR)));
    }

    @Test
    void theChordThatStandsInForTheHarmonyOfItsBassChangesNothing() {
        ChordSymbol minor = ChordSymbol.minor(PitchClass.parse("A"));
        Sketch sketch = bassAndChord("A", "C", Third.MAJOR).meaning(minor);
        assertEquals("0 A, 1 C", symbols(sketch));
        Sketch both = new Sketch(1)
                .push("1.3")
                .bass("A")
                .meaning(minor)
                .push("1.3")
                .chord("C", Third.MAJOR)
                .meaning(minor)
                .push("1.3")
                .chord("C", Third.MAJOR)
                .meaning(minor);
        assertEquals("0 Am", symbols(both));
    }

    @Test
    void aChordWithoutThirdIsNoMajorChord() {
        assertEquals("0 G5", symbols(bassAndChord("G", "G", Third.NONE)));
    }

    @Test
    void aBassBehindAChordWithoutThirdDoesNotGiveItOne() {
        Sketch sketch = bassAndChord("G", "G", Third.NONE).push("1.3").bass("G");
        assertEquals("0 G5", symbols(sketch));
    }

    @Test
    void anAlternatingFifthChangesNothing() {
        ChordSymbol major = ChordSymbol.major(PitchClass.parse("G"));
        Sketch sketch = bassAndChord("G", "G", Third.MAJOR)
                .push("1.3")
                .bass("D")
                .meaning(major)
                .push("1.3")
                .chord("G", Third.MAJOR);
        assertEquals("0 G", symbols(sketch));
        Sketch fifthFirst =
                new Sketch(1).push("1.3").bass("D").meaning(major).push("1.3").chord("G", Third.MAJOR);
        assertEquals("0 G", symbols(fifthFirst));
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
        assertEquals("0 G, 0 C, 0 D", symbols(sketch));
        assertEquals(Fraction.of(3, 4), ((Mark.Symbol) marks.get(2)).offset());
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
                Texts.legend(new ChordSymbols(), together("A", "C").arrangement()));
    }
}
