package org.bellowscribe.annotation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;

class LeftHandScribeTest {

    private static final LeftHandSound D_MAJOR = LeftHandSound.chord(PitchClass.parse("D"), Third.MAJOR);

    private static OwnPart part(Sketch sketch) {
        Arrangement arrangement = sketch.arrangement();
        return LeftHandScribe.part(arrangement, arrangement.tune(), false);
    }

    private static String notes(OwnPart part) {
        return part.measures().stream()
                .flatMap(measure -> measure.notes().stream())
                .map(note -> note.onset() + "+" + note.duration() + " " + note.label() + note.notes())
                .collect(Collectors.joining("; "));
    }

    @Test
    void everyStrokeStandsWhereItSounds() {
        Sketch sketch = new Sketch(1).push("1.3").bass("D").push("1.4").left(Fraction.of(1, 2), D_MAJOR);
        assertEquals("0/1+1/1 D[D3]; 3/2+1/1 d[F#3, A3, D4]", notes(part(sketch)));
    }

    @Test
    void aNoteEndsWhereTheNextBegins() {
        Sketch sketch = new Sketch(1).push("1.3").bass("D").left(Fraction.of(1, 2), D_MAJOR);
        assertEquals("0/1+1/2 D[D3]; 1/2+1/1 d[F#3, A3, D4]", notes(part(sketch)));
    }

    @Test
    void whatIsStruckTogetherIsOneNoteGroup() {
        assertEquals(
                "0/1+1/1 D+d[D3, F#3, A3, D4]",
                notes(part(new Sketch(1).push("1.3").bass("D").chord("D", Third.MAJOR))));
    }

    @Test
    void fingersAreWrittenIfAskedFor() {
        Arrangement arrangement = new Sketch(1).push("1.3").bass("D").arrangement();
        OwnPart part = LeftHandScribe.part(arrangement, arrangement.tune(), true);
        assertEquals(List.of(2), part.measures().get(0).notes().get(0).fingers());
    }

    @Test
    void aTuneWithoutStrokesIsSilent() {
        assertTrue(part(new Sketch(1).push("1.3").silent()).isSilent());
    }

    @Test
    void aloneItHasTheDirectionsOfItsStrokesAndTheAirMarks() {
        Sketch sketch = new Sketch(1)
                .push("1.3")
                .bass("D")
                .pull("1.3")
                .push("1.4")
                .bass("D")
                .pull("1.3")
                .chord("D", Third.MAJOR)
                .rest(BellowsDirection.PULL)
                .air(AirUse.FULL);
        Arrangement arrangement = sketch.arrangement();
        OwnPart part = LeftHandScribe.alone(arrangement, arrangement.tune(), false);
        assertEquals(
                "0/1 push, 3/1 pull, 4/1 pull+air",
                part.measures().get(0).words().stream()
                        .map(words -> words.onset() + " " + words.text())
                        .collect(Collectors.joining(", ")));
    }
}
