package org.bellowscribe.fit;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;

class FittingTest {

    private static final Tune SCALE = TuneText.of("D4 E4 F#4 G4 | A4 B4 C#5 D5 | A4 F#4 D4*2");

    @Test
    void instrumentInTheKeyOfTheTuneComesBeforeOneThatLacksItsNotes() throws DiagnosedException {
        List<Trial> trials = Fitting.rank(SCALE, instruments("cf-21", "dg-21"), options(0, 2));
        assertEquals(
                List.of("dg-21", "cf-21"),
                trials.stream().map(trial -> trial.instrument().id()).toList());
        assertEquals(Trial.Verdict.FITS, trials.get(0).verdict());
        assertEquals(Trial.Verdict.FAILS, trials.get(1).verdict());
    }

    @Test
    void firstMissingNoteIsTheReason() throws DiagnosedException {
        Trial trial = Fitting.rank(SCALE, instruments("cf-21"), options(0, 1)).get(0);
        assertEquals(
                "measure 1, part P1", requireNonNull(trial.obstacle()).place().describe());
        assertTrue(requireNonNull(trial.obstacle()).text().endsWith(" gives F#4."));
    }

    @Test
    void instrumentInAnotherKeyFitsTheTransposedTune() throws DiagnosedException {
        Trial best = Fitting.rank(SCALE, instruments("cf-21"), options(12, 8)).get(0);
        assertEquals(Trial.Verdict.FITS, best.verdict());
        assertTrue(List.of(-2, 3, 10, -9).contains(best.semitones()), "the home keys C and F: " + best.semitones());
    }

    @Test
    void everyInstrumentAndKeyIsTried() throws DiagnosedException {
        List<Trial> trials = Fitting.rank(SCALE, instruments("cf-21", "dg-21", "bc-21"), options(12, 1));
        assertEquals(3 * 25, trials.size());
        assertEquals(
                1,
                trials.stream()
                        .filter(trial -> trial.verdict() == Trial.Verdict.FITS)
                        .count());
    }

    @Test
    void cheaperTrialsComeFirst() throws DiagnosedException {
        List<Integer> costs = new ArrayList<>();
        for (Trial trial : Fitting.rank(SCALE, instruments("dg-21"), options(12, 30))) {
            if (trial.cost() != null) {
                costs.add(trial.cost().total());
            }
        }
        assertTrue(costs.size() > 2);
        assertEquals(costs.stream().sorted().toList(), costs);
    }

    @Test
    void notesThatNoHandReachesFail() throws DiagnosedException {
        Tune wide = TuneText.of("D3+D6");
        Trial trial = Fitting.rank(wide, instruments("dg-21"), options(0, 1)).get(0);
        assertEquals(Trial.Verdict.FAILS, trial.verdict());
    }

    @Test
    void instrumentIsPlayedInItsOwnManner() throws DiagnosedException {
        FitOptions all = options(0, 1);
        Manner across = MannerLibrary.of("across-the-rows");
        FitOptions own = new FitOptions(all.semitones(), 1, all.solver(), Map.of("dg-21", across));
        FitOptions given = new FitOptions(all.semitones(), 1, all.solver().with(across));
        assertEquals(cost(given), cost(own));
        assertNotEquals(cost(all), cost(own));
    }

    private static int cost(FitOptions options) throws DiagnosedException {
        Trial best = Fitting.rank(SCALE, instruments("dg-21"), options).get(0);
        return best.cost() == null ? 0 : best.cost().total();
    }

    private static FitOptions options(int within, int solved) {
        return new FitOptions(
                IntStream.rangeClosed(-within, within).boxed().toList(),
                solved,
                new SolverOptions(
                        MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, FitOptions.CELL_LIMIT));
    }

    private static List<Instrument> instruments(String... ids) throws DiagnosedException {
        List<Instrument> found = new ArrayList<>();
        for (String id : ids) {
            found.add(InstrumentLibrary.find(id));
        }
        return found;
    }
}
