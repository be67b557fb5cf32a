package org.bellowscribe.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.instrument.AirModel;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.junit.jupiter.api.Test;

class SolverTest {

    private static final Manner MANNER = MannerLibrary.of(MannerLibrary.DEFAULT_ID);

    private static SolverOptions options(Times times, boolean airButton) {
        return new SolverOptions(MANNER, times, airButton, SolverOptions.USUAL_CELL_LIMIT);
    }

    private static Outcome solve(Tune tune, Instrument instrument, SolverOptions options) {
        return Solver.solve(tune, instrument, UsualPlan.of(tune, instrument), options);
    }

    private static Solution solved(Outcome outcome) {
        return assertInstanceOf(Outcome.Solved.class, outcome).solution();
    }

    private static List<Diagnostic> errors(Outcome outcome) {
        return assertInstanceOf(Outcome.Unplayable.class, outcome).diagnostics();
    }

    private static String marks(Solution solution) {
        return solution.steps().stream()
                .map(step -> step.buttons().stream().map(b -> b.id()).collect(Collectors.joining("+"))
                        + (step.direction() == BellowsDirection.PULL ? "'" : ""))
                .collect(Collectors.joining(" "));
    }

    private static Instrument withoutLeftHand(Instrument instrument, double capacity) {
        Bellows bellows = instrument.bellows();
        return new Instrument(
                instrument.id(),
                instrument.name(),
                instrument.buttons(),
                List.of(),
                new Bellows(capacity, bellows.reserve(), bellows.lightAirFlow(), bellows.fullAirFlow()),
                instrument.air());
    }

    /** S18: "Bellows and Strings", lessons: the scale of G on the G row is 3 3' 4 4' 5 5' 6' 6. */
    @Test
    void scaleOfTheInnerRowStaysOnIt() throws DiagnosedException {
        Tune tune = TuneText.of("[G] G4 A4 B4 C5 | D5 E5 F#5 G5", 60, new TimeSignature(4, 4), new Key(1, Mode.MAJOR));
        Solution solution =
                solved(solve(tune, withoutLeftHand(InstrumentLibrary.find("dg-21"), 40), options(Times.ONCE, true)));
        assertEquals("2.3 2.3' 2.4 2.4' 2.5 2.5' 2.6' 2.6", marks(solution));
    }

    @Test
    void missingNoteIsNamed() throws DiagnosedException {
        Tune tune = TuneText.of("D4 E4 F4 G4");
        List<Diagnostic> errors = errors(solve(tune, InstrumentLibrary.find("dg-21"), options(Times.AGAIN, true)));
        assertEquals(DiagnosticCode.NO_BUTTON, errors.get(0).code());
        assertTrue(errors.get(0).text().contains("F4"), errors.get(0).text());
    }

    @Test
    void groupThatNoHandReachesIsNamed() throws DiagnosedException {
        Tune tune = TuneText.of("A3+A6*2 D4*2");
        List<Diagnostic> errors = errors(solve(tune, InstrumentLibrary.find("dg-21"), options(Times.ONCE, true)));
        assertEquals(DiagnosticCode.NO_REACH, errors.get(0).code());
    }

    // One A4 reed at 60 quarters a minute takes exactly 1 RU.s a quarter. All four notes are C5 on a one-row in C,
    // which
    // has it on the push only: 4 quarters of C5 in, nothing out.
    private static Instrument oneReed(double capacity, double airFlow) throws DiagnosedException {
        Instrument box = InstrumentLibrary.find("c-10");
        AirModel flat = new AirModel(440, 0, 1, 1, List.of(0), 0, 0, 0, 0);
        return new Instrument(
                "one-reed", "one reed", box.buttons(), List.of(), new Bellows(capacity, 0, airFlow, airFlow), flat);
    }

    /**
     * Twelve pushed quarters close the bellows by 12; each pulled quarter opens them by 1, or by up to 4 with the air
     * button (flow 3). Four pulled notes must open them by 12 in all: 4 + 3 k at least 12 asks for k = 3 presses.
     */
    @Test
    void leastNumberOfAirMarksIsThatOfArithmetic() throws DiagnosedException {
        Tune tune = TuneText.of("C4 C4 C4 D4 | C4 C4 C4 D4 | C4 C4 C4 D4 | C4 C4 C4 D4", 60);
        SolverOptions measuresApart = options(Times.AGAIN, true).with(UnlikeManner.usual());
        Solution solution = solved(solve(tune, oneReed(40, 3), measuresApart));
        long presses = solution.steps().stream()
                .filter(step -> step.air() != AirUse.NONE)
                .count();
        assertEquals(3, presses);
        assertTrue(solution.cost().isProved());
        assertTrue(solution.again());
    }

    /** The same, but a fourth press costs what a measure does that is played otherwise than its equals. */
    @Test
    void whereItCostsNoMoreEqualMeasuresArePlayedAlike() throws DiagnosedException {
        Tune tune = TuneText.of("C4 C4 C4 D4 | C4 C4 C4 D4 | C4 C4 C4 D4 | C4 C4 C4 D4", 60);
        Solution solution = solved(solve(tune, oneReed(40, 3), options(Times.AGAIN, true)));
        assertEquals(List.of(), solution.unlike());
        assertEquals(4 * 5, solution.cost().byRule().get("air-press"));
    }

    @Test
    void withoutTheAirButtonTheSameTuneLastsOnlyOnce() throws DiagnosedException {
        Tune tune = TuneText.of("C4 C4 C4 D4 | C4 C4 C4 D4 | C4 C4 C4 D4 | C4 C4 C4 D4", 60);
        Outcome outcome = solve(tune, oneReed(40, 3), options(Times.AGAIN, false));
        assertFalse(solved(outcome).again());
        List<Diagnostic> remarks =
                assertInstanceOf(Outcome.Solved.class, outcome).diagnostics();
        assertEquals(DiagnosticCode.ONCE_ONLY, remarks.get(0).code());
    }

    @Test
    void smallBellowsWithoutAirNameTheMeasures() throws DiagnosedException {
        Tune tune = TuneText.of("C4 C4 C4 D4 | C4 C4 C4 D4 | C4 C4 C4 D4 | C4 C4 C4 D4", 60);
        List<Diagnostic> errors = errors(solve(tune, oneReed(4, 3), options(Times.AGAIN, false)));
        assertEquals(DiagnosticCode.NO_AIR, errors.get(0).code());
        assertTrue(
                errors.get(0).text().contains("between measure"), errors.get(0).text());
        assertTrue(
                solved(solve(tune, oneReed(4, 3), options(Times.AGAIN, true))).again());
    }

    @Test
    void largerBellowsNeverNeedMoreAirMarks() throws DiagnosedException {
        Tune tune = TuneText.of("C4 C4 C4 D4 | C4 C4 C4 D4 | E4 E4 E4 D4 | C4 C4 C4 r", 60);
        int before = Integer.MAX_VALUE;
        for (double capacity : new double[] {4, 6, 9, 14, 40}) {
            int cost = solved(solve(tune, oneReed(capacity, 3), options(Times.ONCE, true)))
                    .cost()
                    .total();
            assertTrue(cost <= before, "capacity " + capacity + ": " + cost + " after " + before);
            before = cost;
        }
    }

    @Test
    void pushOnlySongIsMarkedForOneTimeThrough() throws DiagnosedException {
        Tune tune = TuneText.of("C4 E4 G4 C5", 120);
        Outcome outcome = solve(tune, oneReed(40, 0), options(Times.AGAIN, true));
        assertFalse(solved(outcome).again());
    }

    /** Twelve pushed quarters leave a stroke of 16 only from 12 up: once, without air. */
    @Test
    void aStartFromWhichTheBellowsEndNamesOneThatDoes() throws DiagnosedException {
        Tune tune = TuneText.of("C4 C4 C4 C4 | C4 C4 C4 C4 | C4 C4 C4 C4", 60);
        SolverOptions once = options(Times.ONCE, false);
        Instrument box = oneReed(16, 3);
        assertTrue(solved(solve(tune, box, once.startingAt(80))).steps().get(0).openingBefore() == 12800);
        Diagnostic error = errors(solve(tune, box, once.startingAt(50))).get(0);
        assertEquals(DiagnosticCode.NO_AIR, error.code());
        assertTrue(
                error.text().startsWith("With the bellows 50 % open at the start no marks were found"), error.text());
    }
}
