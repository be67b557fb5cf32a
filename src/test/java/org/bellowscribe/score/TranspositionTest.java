package org.bellowscribe.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

class TranspositionTest {

    private final Tune tune = TuneText.of("[D] D4 F#4+A4 r*2 | [Em] E4*4");

    @Test
    void notesMove() {
        assertEquals(
                TuneText.of("G4 B4+D5 r*2 | A4*4").events(),
                Transposition.of(tune, 5).events());
    }

    @Test
    void chordSymbolsMove() {
        assertEquals(
                ChordSymbol.minor(PitchClass.parse("A")),
                Transposition.of(tune, 5).harmonies().get(1).chord());
    }

    @Test
    void keysMove() {
        assertEquals(
                new Key(1, Mode.MAJOR),
                Transposition.of(tune, 5).measures().get(0).key());
    }

    @Test
    void upAndDownAgainIsTheSameTune() {
        assertEquals(tune, Transposition.of(Transposition.of(tune, 7), -7));
    }

    @Test
    void byNothingIsTheTuneItself() {
        assertSame(tune, Transposition.of(tune, 0));
    }

    @Test
    void notesMustStayInRange() {
        assertTrue(Transposition.isPossible(tune, 58));
        assertFalse(Transposition.isPossible(tune, 59));
        assertThrows(IllegalArgumentException.class, () -> Transposition.of(tune, 59));
    }
}
