package org.bellowscribe.solver.pin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;

class PinFileTest {

    private static final Tune TUNE = TuneText.of("[G] G4 r A4 G4 | [D] A4 F#4 D4*2 | [G] B4+D5*4 | G4*3 r");

    private static Task task() throws DiagnosedException {
        Instrument box = InstrumentLibrary.find("dg-21");
        SolverOptions options = new SolverOptions(
                MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT);
        return new Task(TUNE, box, UsualPlan.of(TUNE, box), options, 0);
    }

    private static List<Pin> read(String entries) throws DiagnosedException, IOException {
        String text = "<pins>\n" + entries + "\n</pins>";
        PinFile file = PinFile.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        return file.of(task()).list();
    }

    private static Diagnostic error(String entry) {
        DiagnosedException refused = assertThrows(DiagnosedException.class, () -> read(entry));
        assertEquals(1, refused.diagnostics().size());
        return refused.diagnostics().get(0);
    }

    @Test
    void whiteSpaceAroundAValueDoesNotCount() throws DiagnosedException, IOException {
        assertEquals(
                List.of(Pin.at(2)
                        .direction(BellowsDirection.PULL)
                        .button(0, "2.3")
                        .finger(0, 2)),
                read("<pin measure=' 1 ' note=' 2' direction=' pull ' button=' 2.3 ' finger=' 2'/>"));
    }

    @Test
    void notesOfAMeasureAreCountedWithoutItsRests() throws DiagnosedException, IOException {
        assertEquals(
                List.of(Pin.at(2)
                        .direction(BellowsDirection.PULL)
                        .button(0, "2.3")
                        .finger(0, 2)
                        .handOn(2)),
                read("<pin measure='1' note='2' direction='pull' button='2.3' finger='2' hand-on='2'/>"));
    }

    @Test
    void restTakesTheAirButton() throws DiagnosedException, IOException {
        assertEquals(List.of(Pin.at(1).air(AirUse.FULL)), read("<pin measure='1' rest='1' air='full'/>"));
    }

    @Test
    void leftHandIsPinnedStrokeByStroke() throws DiagnosedException, IOException {
        assertEquals(
                List.of(Pin.at(6).leftHand(0, "D").leftHand(1, Pin.SILENCE)),
                read("<pin measure='2' note='3' left-hand='D silent'/>"));
        assertEquals(
                List.of(Pin.at(6).leftHand(0, Pin.SILENCE).leftHand(1, Pin.SILENCE)),
                read("<pin measure='2' note='3' left-hand='silent'/>"));
    }

    @Test
    void buttonOfAGroupBelongsToTheNoteThatItGives() throws DiagnosedException, IOException {
        assertEquals(
                List.of(Pin.at(7).button(1, "2.5").finger(1, 3)),
                read("<pin measure='3' note='1' button='2.5' finger='3'/>"));
    }

    @Test
    void measureThatIsNotThereIsNamedWithItsLine() {
        Diagnostic error = error("<pin measure='40' note='1' direction='push'/>");
        assertEquals(2, error.place().line());
        assertEquals("The tune has no measure 40.", error.text());
        assertEquals(List.of("Maybe one from 1 to 4."), error.advice());
    }

    @Test
    void noteThatIsNotThereIsNamed() {
        Diagnostic error = error("<pin measure='1' note='4' direction='push'/>");
        assertEquals("Measure 1 has no note 4.", error.text());
        assertTrue(
                error.advice().get(0).startsWith("Maybe one from 1 to 3"),
                error.advice().toString());
    }

    @Test
    void buttonOfAnotherNoteIsNamedWithTheRightOnes() {
        Diagnostic error = error("<pin measure='1' note='2' button='2.4'/>");
        assertEquals("Button 2.4 gives B4 on the push and C5 on the pull, not A4.", error.text());
        assertEquals(List.of("Maybe 1.5 on the push or 2.3 on the pull."), error.advice());
    }

    @Test
    void buttonInTheWrongDirectionIsNamed() {
        Diagnostic error = error("<pin measure='1' note='2' button='2.3' direction='push'/>");
        assertEquals("Button 2.3 gives G4 on the push, not A4.", error.text());
    }

    @Test
    void buttonThatTheInstrumentLacksIsNamed() {
        assertEquals(
                "D/G, 21 buttons, low notes has no button 3.1.",
                error("<pin measure='1' note='1' button='3.1'/>").text());
    }

    @Test
    void soundThatCannotStandInIsNamedWithThoseThatCan() {
        Diagnostic error = error("<pin measure='1' note='1' left-hand='E'/>");
        assertTrue(error.text().startsWith("The left hand cannot play E here"), error.text());
        assertTrue(
                error.advice().get(0).contains("G on the push"), error.advice().toString());
        assertTrue(error.advice().get(0).contains("or silent"), error.advice().toString());
    }

    @Test
    void soundsMustBeAsManyAsAreWanted() {
        assertEquals(
                "The left hand plays 2 times during this note, and the pin names 1 sounds.",
                error("<pin measure='2' note='3' left-hand='D'/>").text());
    }

    @Test
    void pinThatFixesNothingIsRefused() {
        assertTrue(error("<pin measure='1' note='1'/>").text().contains("fixes nothing"));
    }

    @Test
    void noteAndRestTogetherAreRefused() {
        assertEquals(
                "A pin is at a note or at a rest.",
                error("<pin measure='1' note='1' rest='1' air='full'/>").text());
    }

    @Test
    void allWrongPinsAreNamedAtOnce() {
        DiagnosedException refused = assertThrows(
                DiagnosedException.class,
                () -> read("<pin measure='9' note='1' air='full'/>\n<pin measure='1' note='9' air='full'/>"));
        assertEquals(
                List.of(2, 3),
                refused.diagnostics().stream()
                        .map(remark -> remark.place().line())
                        .toList());
    }

    @Test
    void misspelledDirectionIsAgainstTheSchema() {
        Diagnostic error = error("<pin measure='1' note='1' direction='draw'/>");
        assertEquals(2, error.place().line());
        assertTrue(error.advice().toString().contains("push or pull"), error.toString());
    }
}
