package org.bellowscribe.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.stream.Collectors;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.AirModel;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.bellowscribe.theory.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What published lessons play on a one-row comes out exactly. */
class OneRowTest {

    // An invented song along the home row, a little more pushed than pulled, as songs on one row are.
    private static final String SLOW_SONG = "C4 E4 D4 E4 | F4 E4 D4 C4 | E4 G4 A4 G4 | E4 D4 C4*2"
            + " | C4 E4 D4 E4 | F4 A4 G4 E4 | D4 E4 F4 D4 | E4 D4 C4*2";

    private static String buttons(String instrument, String notes) throws DiagnosedException {
        Instrument box = InstrumentLibrary.find(instrument);
        SolverOptions options = new SolverOptions(
                MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.ONCE, true, SolverOptions.USUAL_CELL_LIMIT);
        Tune tune = TuneText.of(notes);
        Outcome outcome = Solver.solve(tune, box, UsualPlan.of(tune, box), options);
        return assertInstanceOf(Outcome.Solved.class, outcome).solution().steps().stream()
                .map(step -> step.buttons().get(0).number() + (step.direction() == BellowsDirection.PULL ? "'" : ""))
                .collect(Collectors.joining(" "));
    }

    /** S7: "Big Nick", box lesson 3, bignick.net, in C; S8: the same numbers on a one-row in D. */
    @ParameterizedTest
    @CsvSource({"c-10, C4 D4 E4 F4 | G4 A4 B4 C5", "d-10, D4 E4 F#4 G4 | A4 B4 C#5 D5"})
    void scale(String instrument, String notes) throws DiagnosedException {
        assertEquals("3 3' 4 4' 5 5' 6' 6", buttons(instrument, notes));
    }

    /** S24: John Kirkpatrick, "How to Play the Anglo", 1972: pushing along the row gives the chord of the row. */
    @ParameterizedTest
    @CsvSource({"c-10, C4 E4 G4 C5 | E5 C5 G4 E4", "d-10, D4 F#4 A4 D5 | F#5 D5 A4 F#4"})
    void arpeggio(String instrument, String notes) throws DiagnosedException {
        assertEquals("3 4 5 6 7 6 5 4", buttons(instrument, notes));
    }

    /** G. Coover, concertina.net, topic 20322: "Oh! Susanna" (S. Foster, 1848) on three buttons of one row. */
    @ParameterizedTest
    @CsvSource({
        "c-10, C4 D4 E4 G4 | G4 A4 G4 E4 | C4 D4 E4 E4 | D4 C4 D4*2, 3 3' 4 5 5 5' 5 4 3 3' 4 4 3' 3 3'",
        "c-10, F4*2 F4*2 | A4 A4*2 A4 | G4 G4 E4 C4 | D4*4, 4' 4' 5' 5' 5' 5 5 4 3 3'",
        "d-10, D4 E4 F#4 A4 | A4 B4 A4 F#4 | D4 E4 F#4 F#4 | E4 D4 E4*2, 3 3' 4 5 5 5' 5 4 3 3' 4 4 3' 3 3'",
        "d-10, G4*2 G4*2 | B4 B4*2 B4 | A4 A4 F#4 D4 | E4*4, 4' 4' 5' 5' 5' 5 5 4 3 3'"
    })
    void simpleSong(String instrument, String notes, String published) throws DiagnosedException {
        assertEquals(published, buttons(instrument, notes));
    }

    /** Common practice, no source: held half open and without air, such a song closes the bellows about half way. */
    @Test
    void slowSongClosesTheBellowsAboutHalfWay() throws DiagnosedException {
        assertEquals(4, measureThatCloses(false), "melody alone");
        assertEquals(3, measureThatCloses(true), "with bass and chord on half of each beat");
    }

    // Two voices; 1-based measure of the slow song at 60 quarters a minute.
    private static int measureThatCloses(boolean leftHand) throws DiagnosedException {
        Instrument box = InstrumentLibrary.find("c-10");
        AirModel usual = InstrumentLibrary.find("dg-21").air();
        double opening = box.bellows().capacity() / 2;
        Tune song = TuneText.of(SLOW_SONG, 60);
        for (Event event : song.events()) {
            Pitch pitch = event.pitches().get(0);
            boolean pushed = box.buttons().stream().anyMatch(button -> pitch.equals(button.push()));
            double seconds = song.seconds(event);
            double leftHandAir = leftHand ? seconds / 2 * (usual.bassFlow() + usual.chordFlow()) / 2 : 0;
            opening += (pushed ? -1 : 1) * (usual.flow(pitch) * seconds + leftHandAir);
            if (opening < box.bellows().lowest()) {
                return event.measure() + 1;
            }
        }
        return 0;
    }
}
