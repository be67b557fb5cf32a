package org.bellowscribe.annotation.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Sketch;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.junit.jupiter.api.Test;

/** Marks for two strapped hands; row 2 is the C row, row 3 the G row, row 1 the accidentals. */
class ConcertinaMarksTest {

    private static Arrangement arrangement() throws DiagnosedException {
        Arrangement sketch =
                new Sketch(3).push("2.3", "3.6").pull("2.10").push("1.1").arrangement();
        return new Arrangement(sketch.tune(), InstrumentLibrary.find("anglo-cg-30"), sketch.solution(), sketch.style());
    }

    @Test
    void numbersTellRowsAndHandsWithoutSigns() throws DiagnosedException {
        assertEquals(
                List.of("3/16", "(10)", "21"),
                new Buttons()
                        .marks(arrangement()).stream()
                                .map(mark -> ((Mark.Syllable) mark).text())
                                .toList());
    }

    @Test
    void noPlaceOfTheHandIsMarked() throws DiagnosedException {
        assertEquals(List.of(), new HandPlace().marks(arrangement()));
        assertEquals(List.of(), new HandPlace().legend(arrangement()));
    }
}
