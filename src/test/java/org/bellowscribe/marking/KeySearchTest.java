package org.bellowscribe.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.Costs;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solution;
import org.junit.jupiter.api.Test;

class KeySearchTest {

    private static final Tune TUNE = TuneText.of("D4 E4");

    /** Returns a search in which only the given keys can be played, at the given costs. */
    private static KeySearch playable(Map<Integer, Integer> costs) {
        return new KeySearch(TUNE, (tune, semitones) -> {
            Integer cost = costs.get(semitones);
            return cost == null
                    ? new Outcome.Unplayable(
                            List.of(Diagnostic.error(DiagnosticCode.NO_AIR, Place.FILE, "No.", "Maybe.")))
                    : new Outcome.Solved(
                            new Solution(List.of(), true, Costs.of(cost, cost, new TreeMap<>()), List.of()), List.of());
        });
    }

    @Test
    void keyOfTheSheetComesBeforeACheaperOne() {
        assertEquals(0, playable(Map.of(0, 90, 1, 5)).nearest().semitones());
    }

    @Test
    void nearerKeyComesBeforeACheaperOne() {
        assertEquals(-2, playable(Map.of(-2, 90, 3, 5)).nearest().semitones());
    }

    @Test
    void ofTwoEquallyNearTheCheaperIsTaken() {
        assertEquals(-2, playable(Map.of(-2, 4, 2, 5)).nearest().semitones());
        assertEquals(2, playable(Map.of(-2, 5, 2, 4)).nearest().semitones());
    }

    @Test
    void ofTwoEquallyNearAndCheapTheHigherIsTaken() {
        assertEquals(2, playable(Map.of(-2, 5, 2, 5)).nearest().semitones());
    }

    @Test
    void tuneMovesWithItsKey() {
        assertEquals(
                TuneText.of("G4 A4").events(),
                playable(Map.of(5, 1)).nearest().tune().events());
    }

    @Test
    void whereNoKeyCanBePlayedTheReasonIsThatOfTheSheet() {
        KeySearch.InKey none = playable(Map.of(13, 1)).nearest();
        assertEquals(0, none.semitones());
        List<Diagnostic> why =
                assertInstanceOf(Outcome.Unplayable.class, none.outcome()).diagnostics();
        assertEquals(List.of("No."), why.stream().map(Diagnostic::text).toList());
    }

    @Test
    void noteThatLeavesThePitchesIsAReason() {
        KeySearch.InKey high = new KeySearch(TuneText.of("G9"), (tune, semitones) -> {
                    throw new AssertionError("nothing to solve");
                })
                .by(1);
        assertInstanceOf(Outcome.Unplayable.class, high.outcome());
    }
}
