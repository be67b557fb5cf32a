package org.bellowscribe.accompaniment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.junit.jupiter.api.Test;

class HarmonySpanTest {

    private static Tune tune(int beats, int beatType, String text) {
        return TuneText.of(text, 120, new TimeSignature(beats, beatType), new Key(1, Mode.MAJOR));
    }

    private static String lengths(Tune tune) {
        return HarmonySpan.of(tune).stream()
                .map(span -> span.length().toString())
                .collect(Collectors.joining(" "));
    }

    @Test
    void evenTimesFallIntoHalvesAndAWaltzDoesNot() {
        assertEquals("2/1 2/1", lengths(tune(4, 4, "G4*4")));
        assertEquals("3/2 3/2", lengths(tune(6, 8, "G4*3")));
        assertEquals("3/1", lengths(tune(3, 4, "G4*3")));
    }

    @Test
    void threeHalvesMayEachHaveTheirOwn() {
        assertEquals("2/1 2/1 2/1", lengths(tune(3, 2, "G4*6")));
    }

    @Test
    void slipJigMayChangeOnItsThirdPulse() {
        assertEquals("3/1 3/2", lengths(tune(9, 8, "G4*9/2")));
    }

    @Test
    void twelveEightIsTwoMeasuresOfSixEight() {
        Tune tune = tune(12, 8, "G4*6");
        List<HarmonySpan> spans = HarmonySpan.of(tune);
        assertEquals("3/2 3/2 3/2 3/2", lengths(tune));
        assertTrue(spans.get(1).isWithin(tune.measures().get(0)));
        assertFalse(spans.get(2).isWithin(tune.measures().get(0)));
        assertEquals(0.5, spans.get(2).share(tune.measures().get(0)));
    }

    @Test
    void pickUpBelongsToTheEndOfItsMeasure() {
        assertEquals("1/1 2/1 2/1", lengths(tune(4, 4, "D4 | G4*4")));
    }
}
