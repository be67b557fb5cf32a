package org.bellowscribe.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Sketch;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.decision.Steered;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.replay.Played;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

class TuneInWordsTest {

    private static final Style ENGLISH = StyleLibrary.library().of(StyleLibrary.DEFAULT_ID);

    private static TuneInWords words(Tune tune, Played played) {
        SolverOptions options = new SolverOptions(MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, 1);
        Task task = new Task(tune, Played.BOX, List.of(), options, 0);
        return TuneInWords.of(new DecidedTune(task, tune, tune, false, played.solution(), Steered.NOT), ENGLISH);
    }

    private static List<String> lines(Tune tune, Played played) {
        return words(tune, played).lines().stream().map(WordLine::toString).toList();
    }

    private static String said(Sketch sketch) {
        Arrangement arrangement = sketch.arrangement();
        int last = arrangement.solution().steps().size() - 1;
        return String.join(", ", new SpokenStep(arrangement, arrangement.tune()).pieces(arrangement.step(last)));
    }

    @Test
    void aWholeTuneIsToldLineByLineAfterWhatToKnowBefore() {
        Tune tune = TuneText.of("C4 | D4 r", 60, List.of(0, 1, 0, 1));
        Played played = new Played(tune, 5000)
                .push(1000, 1)
                .bass("0", "1")
                .pull(1000, 1)
                .held()
                .pull(500)
                .air(AirUse.FULL, 500);
        assertEquals("""
                test
                Instrument: Small box
                Key: D major, time 4/4
                Tempo: 60 quarter notes a minute
                Order of play: measures 1 to 2, 1 to 2
                Before you begin: bellows half open
                Each line lasts until the next one begins.

                measure 1, beat 4: index finger over button 1, C, push, button 1, finger 1, bass C

                measure 2, beat 1: D, pull, button 1, button still down, finger 1
                measure 2, beat 2: rest, pull, press air
                """, words(tune, played).text());
    }

    @Test
    void aRestInWhichNothingMovesHasNoDirection() {
        assertEquals("rest", said(new Sketch(1).push("1.3").rest(BellowsDirection.PUSH)));
    }

    @Test
    void theRowIsSaidInFullAtEveryButton() {
        assertEquals("C, pull, button 4 of the inner row, finger 1", said(new Sketch(2).pull("2.4")));
        assertEquals("C, push, button 3 of the outer row, finger 1", said(new Sketch(2).push("1.3")));
        assertEquals("C, push, button 3 of the middle row, finger 1", said(new Sketch(3).push("2.3")));
        assertEquals("C, push, button 3 of the row 4, finger 1", said(new Sketch(4).push("4.3")));
    }

    @Test
    void notesStruckTogetherAreJoined() {
        assertEquals(
                "C and C, push, button 3 of the outer row and button 4 of the outer row, fingers 1 and 2",
                said(new Sketch(2).push("1.3", "1.4").fingers(1, 2)));
    }

    @Test
    void bassAndChordAreToldApartByWordsNotByCapitals() {
        assertEquals(
                "C, push, button 3, finger 1, bass D and chord D",
                said(new Sketch(1).push("1.3").bass("D").chord("D", Third.MAJOR)));
        assertEquals(
                "C, push, button 3, finger 1, chord E minor",
                said(new Sketch(1).push("1.3").chord("E", Third.MINOR)));
    }

    @Test
    void aLaterStrokeIsSaidWithItsBeat() {
        assertEquals(
                "C, push, button 3, finger 1, at beat 1 and a half bass G",
                said(new Sketch(1).push("1.3").left(Fraction.QUARTER, LeftHandSound.bass(PitchClass.parse("G")))));
    }

    @Test
    void lightAirIsSaid() {
        assertEquals(
                "C, push, button 3, finger 1, press air lightly",
                said(new Sketch(1).push("1.3").air(AirUse.LIGHT)));
    }

    @Test
    void beatsAreThoseOfTheTimeSignature() {
        Tune jig = TuneText.of("C4*1/2 E4*1/4 G4*1/4 C4*2", 120, new TimeSignature(6, 8), new Key(0, Mode.MAJOR));
        Played played = new Played(jig, 9000).push(1, 1).push(1, 2).push(1, 3).push(1, 1);
        assertEquals(
                List.of("measure 1, beat 1", "measure 1, beat 2", "measure 1, beat 2 and a half", "measure 1, beat 3"),
                words(jig, played).lines().stream().map(WordLine::place).toList());
    }

    @Test
    void tripletsAreThirdsOfABeat() {
        Tune tune = TuneText.of("C4*1/3 E4*1/3 G4*1/3 C4*3");
        Played played = new Played(tune, 9000).push(1, 1).push(1, 2).push(1, 3).push(1, 1);
        assertEquals(
                List.of(
                        "measure 1, beat 1",
                        "measure 1, beat 1 and a third",
                        "measure 1, beat 1 and two thirds",
                        "measure 1, beat 2"),
                words(tune, played).lines().stream().map(WordLine::place).toList());
    }

    @Test
    void aNoteThatLastsIntoTheNextMeasureTellsItsLaterBassThere() {
        Tune tune = TuneText.of("C4*3 E4 | C4*3");
        Played played =
                new Played(tune, 9000).push(1, 1).push(1, 2).bass("1", "1").push(1, 1);
        assertEquals(
                "measure 1, beat 4: E, push, button 2, finger 2, in measure 2 at beat 1 bass C",
                lines(tune, played).get(1));
    }
}
