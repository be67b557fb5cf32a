package org.bellowscribe.guess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.marking.SampleTune;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Pitch;
import org.junit.jupiter.api.Test;

class GuessesTest {

    private static final DecidedTune GATE = SampleTune.decided("the-leaning-gate");

    @Test
    void theRatesOfTheRulesAddUp() {
        Guesses guesses = Guesses.of(GATE);
        int right =
                guesses.byRule().values().stream().mapToInt(Guesses.Rate::right).sum();
        assertEquals(guesses.rate().right(), right);
        assertTrue(right < guesses.rate().all() && right > 0, guesses.rate().toString());
    }

    /** Told anew from the order of play alone: a note that was played otherwise the last time is no right guess. */
    @Test
    void aNoteThatDiffersFromItsLastTimeIsNotGuessed() {
        Guesses guesses = Guesses.of(GATE);
        Map<List<Pitch>, Step> last = new HashMap<>();
        int surprises = 0;
        for (int event : GATE.tune().eventOrder()) {
            Step step = GATE.solution().steps().get(event);
            if (step.buttons().isEmpty() || step.event().heldOver()) {
                continue;
            }
            Step before = last.put(step.event().pitches(), step);
            if (before != null
                    && (before.direction() != step.direction()
                            || !before.buttons().equals(step.buttons()))) {
                assertFalse(guesses.right().contains(event), step.toString());
                surprises++;
            }
        }
        assertTrue(surprises > 0);
    }
}
