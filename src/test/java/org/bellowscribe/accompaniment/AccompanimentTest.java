package org.bellowscribe.accompaniment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.accompaniment.pattern.PatternLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.theory.Fraction;
import org.junit.jupiter.api.Test;

class AccompanimentTest {

    private static List<String> roots(Tune tune, int measure) throws DiagnosedException {
        return Accompaniment.plan(tune, InstrumentLibrary.find("dg-21"), PatternLibrary.usual()).stream()
                .filter(wanted -> tune.events().get(wanted.event()).measure() == measure)
                .map(wanted -> wanted.harmonies().get(0).chord().root().toString())
                .distinct()
                .toList();
    }

    @Test
    void harmonyIsFoundWhereNoneIsWritten() throws DiagnosedException {
        Tune tune = TuneText.of("[A] D4 F#4 A4 D5 | D4 F#4 A4 D5 | [?] G4 B4 D5 G5 | D5 A4 F#4 D4");
        assertEquals(List.of("A"), roots(tune, 1));
        assertEquals(List.of("G"), roots(tune, 2));
        assertEquals(List.of("D"), roots(tune, 3));
    }

    @Test
    void writtenHarmonyHoldsAgainAfterAGap() throws DiagnosedException {
        Tune tune = TuneText.of("[?] D4 F#4 A4 D5 | [A] D4 F#4 A4 D5 | G4 B4 D5 G5");
        assertEquals(List.of("D"), roots(tune, 0));
        assertEquals(List.of("A"), roots(tune, 2));
    }

    /** Two measures of 4/4 in one: the held close has its bass and chord. */
    @Test
    void longerMeasureHasItsPatternAgain() throws DiagnosedException {
        Tune tune = TuneText.of("D4 F#4 A4 D5 | A4 F#4 E4 E4 D4*4");
        int held = tune.events().size() - 1;
        assertEquals(
                List.of(Fraction.ZERO, Fraction.of(1, 1), Fraction.of(2, 1), Fraction.of(3, 1)),
                Accompaniment.plan(tune, InstrumentLibrary.find("dg-21"), PatternLibrary.usual()).stream()
                        .filter(wanted -> wanted.event() == held)
                        .map(WantedSound::offset)
                        .toList());
    }
}
