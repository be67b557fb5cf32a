package org.bellowscribe.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;

class PinsTest {

    private static final Tune TUNE = TuneText.of("[G] G4 B4 A4 G4 | [D] A4 F#4 D4*2 | [G] B4 D5 B4 A4 | G4*3 r");

    private static Task task(Pins pins) throws DiagnosedException {
        Instrument box = InstrumentLibrary.find("dg-21");
        SolverOptions options = new SolverOptions(
                MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT, pins);
        return new Task(TUNE, box, UsualPlan.of(TUNE, box), options, 0);
    }

    private static Solution solve(Pins pins) throws DiagnosedException {
        return assertInstanceOf(Outcome.Solved.class, Solver.solve(task(pins))).solution();
    }

    private static Diagnostic error(Pins pins) throws DiagnosedException {
        return assertInstanceOf(Outcome.Unplayable.class, Solver.solve(task(pins)))
                .diagnostics()
                .get(0);
    }

    @Test
    void pinnedDirectionIsKept() throws DiagnosedException {
        BellowsDirection other = solve(Pins.NONE).steps().get(2).direction().opposite();
        Solution pinned = solve(new Pins(List.of(Pin.at(2).direction(other))));
        assertEquals(other, pinned.steps().get(2).direction());
    }

    @Test
    void pinnedButtonAndFingerAreKept() throws DiagnosedException {
        // A4 is button 5 of the outer row pushed, and button 3 of the inner row pulled.
        Step free = solve(Pins.NONE).steps().get(2);
        String other = free.buttons().get(0).id().equals("1.5") ? "2.3" : "1.5";
        Step pinned = solve(new Pins(List.of(Pin.at(2).button(0, other).finger(0, 2))))
                .steps()
                .get(2);
        assertEquals(other, pinned.buttons().get(0).id());
        assertEquals(List.of(2), pinned.fingers());
    }

    @Test
    void pinnedPlaceOfTheHandIsKept() throws DiagnosedException {
        Solution pinned = solve(new Pins(List.of(Pin.at(0).handOn(2), Pin.at(7).handOn(3))));
        assertEquals(2, pinned.steps().get(0).handOn());
        assertEquals(3, pinned.steps().get(7).handOn());
    }

    @Test
    void pinnedSilenceIsKept() throws DiagnosedException {
        assertEquals("G", solve(Pins.NONE).steps().get(0).leftHand().get(0).wantedLabel());
        Step pinned = solve(new Pins(List.of(Pin.at(0).leftHand(0, Pin.SILENCE))))
                .steps()
                .get(0);
        assertEquals(null, pinned.leftHand().get(0).sound());
    }

    @Test
    void pinnedStandInOfTheLeftHandIsKept() throws DiagnosedException {
        // The fifth above G.
        Step pinned =
                solve(new Pins(List.of(Pin.at(0).leftHand(0, "D")))).steps().get(0);
        assertEquals("D", pinned.leftHand().get(0).sound().label());
    }

    @Test
    void pinnedAirIsPressedAndPinnedRestOfTheThumbIsKept() throws DiagnosedException {
        assertEquals(
                AirUse.FULL,
                solve(new Pins(List.of(Pin.at(3).air(AirUse.FULL))))
                        .steps()
                        .get(3)
                        .air());
        for (int event = 0; event < TUNE.events().size(); event++) {
            assertEquals(
                    AirUse.NONE,
                    solve(new Pins(List.of(Pin.at(event).air(AirUse.NONE))))
                            .steps()
                            .get(event)
                            .air());
        }
    }

    @Test
    void pinNeverMakesATuneCheaper() throws DiagnosedException {
        int free = solve(Pins.NONE).cost().total();
        for (int event = 0; event < TUNE.events().size(); event++) {
            for (BellowsDirection direction : BellowsDirection.values()) {
                Outcome outcome =
                        Solver.solve(task(new Pins(List.of(Pin.at(event).direction(direction)))));
                if (outcome instanceof Outcome.Solved solved) {
                    assertTrue(solved.solution().cost().total() >= free, "event " + event);
                }
            }
        }
    }

    @Test
    void pinThatAgreesWithTheCheapestMarksCostsNothing() throws DiagnosedException {
        Solution free = solve(Pins.NONE);
        Step third = free.steps().get(2);
        Pin same = Pin.at(2)
                .direction(third.direction())
                .button(0, third.buttons().get(0).id())
                .handOn(third.handOn())
                .air(third.air());
        assertEquals(free, solve(new Pins(List.of(same))));
    }

    @Test
    void pinThatNothingAgreesWithIsNamed() throws DiagnosedException {
        // B4 is 2.4 pushed and 1.5 pulled.
        Pin wrong = Pin.at(1).direction(BellowsDirection.PULL).button(0, "2.4");
        Diagnostic error = error(new Pins(List.of(Pin.at(0).direction(BellowsDirection.PUSH), wrong)));
        assertEquals(DiagnosticCode.PIN_CONFLICT, error.code());
        assertEquals(
                "Nothing that can be played on D/G, 21 buttons, low notes agrees with the pin at measure 1, note 2 (pull, button"
                        + " 2.4).",
                error.text());
        assertEquals(List.of("Maybe leave it out: without it the tune can be played."), error.advice());
    }

    @Test
    void fewestConflictingPinsAreNamed() throws DiagnosedException {
        Pin push = Pin.at(2).direction(BellowsDirection.PUSH);
        Pin pull = Pin.at(2).direction(BellowsDirection.PULL);
        Diagnostic error = error(
                new Pins(List.of(Pin.at(0).air(AirUse.NONE), push, Pin.at(5).air(AirUse.NONE), pull)));
        assertTrue(error.text().contains("these 2 pins together: measure 1, note 3 (push); measure 1, note 3 (pull)."));
    }

    @Test
    void placeFromWhichNoFingerReachesIsToldWithThoseFromWhichOneDoes() throws DiagnosedException {
        // G4 is 2.3 pushed and 1.4 pulled: fingers 1 to 4 and a stretch at either end reach it from 1 to 5.
        Diagnostic error = error(new Pins(List.of(Pin.at(0).handOn(7))));
        assertEquals(
                "Maybe leave it out: without it the tune can be played. With these notes the hand can be on 1, 2, 3, 4, 5.",
                error.advice().get(0));
    }

    @Test
    void laterStrokeOfTheLeftHandIsNamed() {
        assertEquals("left hand D", Pin.at(3).leftHand(0, "D").describe());
        assertEquals("stroke 2 of the left hand D", Pin.at(3).leftHand(1, "D").describe());
        assertEquals(
                "left hand G+g", Pin.at(3).leftHand(0, "G").leftHand(1, "g").describe());
    }
}
