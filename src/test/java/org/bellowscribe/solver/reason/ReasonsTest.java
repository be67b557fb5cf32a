package org.bellowscribe.solver.reason;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.instrument.AirModel;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;

/** The smallest reason why a tune cannot be played, and ways out that hold when they are taken. */
class ReasonsTest {

    private static final String PUSHED = "C4 E4 G4 C5 | C4 E4 G4 C5";

    private static Task task(Tune tune, Instrument box, Times times, boolean airButton) {
        SolverOptions options = new SolverOptions(
                MannerLibrary.of(MannerLibrary.DEFAULT_ID), times, airButton, SolverOptions.USUAL_CELL_LIMIT);
        return new Task(tune, box, List.of(), options, 0);
    }

    private static List<Diagnostic> errors(Task task) {
        return assertInstanceOf(Outcome.Unplayable.class, Solver.solve(task)).diagnostics();
    }

    // One row in C on which every reed takes 1 RU at any pitch.
    private static Instrument oneReed(double capacity, double airFlow) throws DiagnosedException {
        Instrument box = InstrumentLibrary.find("c-10");
        AirModel flat = new AirModel(440, 0, 1, 1, List.of(0), 0, 0, 0, 0);
        return new Instrument(
                "one-reed", "one reed", box.buttons(), List.of(), new Bellows(capacity, 0, airFlow, airFlow), flat);
    }

    @Test
    void notesThatLieTooFarApartAreNamedWithThoseToLeaveOut() throws DiagnosedException {
        Tune tune = TuneText.of("D4+F#4+A6*2 D4*2");
        Diagnostic error = errors(task(tune, InstrumentLibrary.find("dg-21"), Times.ONCE, true))
                .get(0);
        assertEquals(DiagnosticCode.NO_REACH, error.code());
        assertTrue(error.text().endsWith(": D4 and A6 lie too far apart."), error.text());
        assertEquals(
                "Maybe leave out A6: a hand reaches the others.", error.advice().get(0));
    }

    @Test
    void notesOfOppositeDirectionsAreNamed() throws DiagnosedException {
        // On a row in C, C is pushed and D is pulled.
        Diagnostic error = errors(task(TuneText.of("C4+D4*4"), oneReed(40, 3), Times.ONCE, true))
                .get(0);
        assertTrue(error.text().endsWith(": C4 and D4 sound in opposite directions."), error.text());
        assertEquals(
                "Maybe leave out C4 or D4: a hand reaches the others.",
                error.advice().get(0));
    }

    /** 8 pushed quarters at 60 take 8 RU.s: more than bellows of 4 hold, and just what those of 8 do. */
    @Test
    void stretchThatNoBellowsSurviveIsNamedWithWaysOutThatHold() throws DiagnosedException {
        Diagnostic error = errors(task(TuneText.of(PUSHED, 60), oneReed(4, 0), Times.ONCE, false))
                .get(0);
        assertEquals(DiagnosticCode.NO_AIR, error.code());
        assertTrue(error.text().contains("between measure 1 and measure 2"), error.text());
        int quarters = number(error, "at (\\d+) quarter notes a minute");
        assertNotNull(Solver.attempt(task(TuneText.of(PUSHED, quarters), oneReed(4, 0), Times.ONCE, false)));
        assertTrue(error.advice().stream().anyMatch(each -> each.contains("2.00 times the air (capacity 8.0)")));
        assertNotNull(Solver.attempt(task(TuneText.of(PUSHED, 60), oneReed(8, 0), Times.ONCE, false)));
    }

    private static int number(Diagnostic error, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(String.join(" ", error.advice()));
        assertTrue(matcher.find(), error.advice().toString());
        return Integer.parseInt(matcher.group(1));
    }

    @Test
    void airButtonIsAWayOutOnlyWhereItHelps() throws DiagnosedException {
        Tune tune = TuneText.of("C4 C4 C4 D4 | C4 C4 C4 D4 | C4 C4 C4 D4", 60);
        Diagnostic helps = errors(task(tune, oneReed(4, 3), Times.AGAIN, false)).get(0);
        assertTrue(
                helps.advice().get(0).startsWith("Maybe add air to the marks"),
                helps.advice().toString());
        Diagnostic helpsNot = errors(task(TuneText.of(PUSHED, 60), oneReed(4, 3), Times.ONCE, false))
                .get(0);
        assertTrue(
                helpsNot.advice().stream().noneMatch(each -> each.contains("add air")),
                helpsNot.advice().toString());
    }

    /** Played twice, 4 pushed quarters at 60 close the bellows by 4 RU.s each time. */
    @Test
    void repeatThatCannotCloseIsNamedWithItsLeastDrift() throws DiagnosedException {
        Tune tune = TuneText.of("C4 E4 G4 C5 | D4 B4 D4 B4", 60, List.of(0, 0, 1));
        Diagnostic error = errors(task(tune, oneReed(40, 0), Times.ONCE, false)).get(0);
        assertTrue(
                error.text()
                        .contains(
                                "The repeat from measure 1 to measure 1 closes the bellows of one reed by at least the air of an A4 of 4.0"),
                error.text());
    }

    @Test
    void tuneForOneTimeThroughSaysHowFarItDrifts() throws DiagnosedException {
        Outcome outcome = Solver.solve(task(TuneText.of("C4 E4 G4 C5", 60), oneReed(40, 0), Times.AGAIN, true));
        Diagnostic note =
                assertInstanceOf(Outcome.Solved.class, outcome).diagnostics().get(0);
        assertEquals(DiagnosticCode.ONCE_ONLY, note.code());
        assertTrue(
                note.text()
                        .contains("(one time through closes the bellows by at least the air of an A4 of 4.0 seconds)"),
                note.text());
    }

    @Test
    void pinsAreBlamedBeforeTheBellows() throws DiagnosedException {
        Tune tune = TuneText.of("C4 C4 C4 D4 | C4 C4 C4 D4 | C4 C4 C4 D4", 60);
        Task task = task(tune, oneReed(4, 3), Times.ONCE, true);
        Pin noAir = Pin.at(3).air(AirUse.NONE);
        Pin free = Pin.at(0).air(AirUse.NONE);
        assertInstanceOf(Outcome.Solved.class, Solver.solve(task));
        Diagnostic error = errors(task.with(new Pins(List.of(free, noAir)))).get(0);
        assertEquals(DiagnosticCode.PIN_CONFLICT, error.code());
        assertTrue(error.text().contains("the pin at measure 1, note 4 (air none)"), error.text());
    }

    @Test
    void groupOfWhichAnyTwoCanBeHeldSaysWhatFailsEitherWay() throws DiagnosedException {
        Tune tune = TuneText.of("A3+F#4+C#5*2 D4*2 | A3+E5+B5*2 D4*2");
        List<Diagnostic> errors = errors(task(tune, InstrumentLibrary.find("dg-21"), Times.ONCE, true));
        String either =
                "No hand reaches %s together in one bellows direction on D/G, 21 buttons, low notes: on the push no button"
                        + " gives %s, on the pull %s.";
        assertEquals(
                either.formatted("[A3, F#4, C#5]", "C#5", "the fingers do not suffice"),
                errors.get(0).text());
        assertEquals(
                either.formatted("[A3, E5, B5]", "E5", "A3 and B5 lie too far apart"),
                errors.get(1).text());
    }
}
