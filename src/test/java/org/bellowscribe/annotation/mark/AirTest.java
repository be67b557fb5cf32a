package org.bellowscribe.annotation.mark;

import static org.bellowscribe.instrument.BellowsDirection.PULL;
import static org.bellowscribe.instrument.BellowsDirection.PUSH;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Sketch;
import org.bellowscribe.solver.AirUse;
import org.junit.jupiter.api.Test;

class AirTest {

    @Test
    void airIsWrittenWhereTheButtonIsPressed() {
        Sketch sketch = new Sketch(1).pull("1.3").pull("1.4").air(AirUse.FULL).pull("1.5");
        assertEquals(List.of("1: air"), words(sketch));
    }

    @Test
    void aLightPressIsToldFromAFullOne() {
        Sketch sketch = new Sketch(1).pull("1.3").pull("1.4").air(AirUse.LIGHT);
        assertEquals(List.of("1: light air"), words(sketch));
    }

    @Test
    void airAtATurnComesWithTheDirection() {
        Sketch sketch = new Sketch(1).push("1.3").pull("1.4").air(AirUse.FULL);
        assertEquals(List.of("1: pull", "1: air"), words(sketch));
    }

    @Test
    void aTurnOnOneOfTwoWaysThereIsATurn() {
        Sketch sketch = new Sketch(1)
                .pull("1.3")
                .measure()
                .pull("1.4")
                .air(AirUse.FULL)
                .push("1.5")
                .order(1, 2, 2);
        assertEquals(List.of("1: pull", "1: air"), words(sketch));
    }

    @Test
    void airInARestComesWithTheDirection() {
        Sketch sketch = new Sketch(1).pull("1.3").rest(PULL).air(AirUse.FULL).push("1.3");
        assertEquals(List.of("1: pull", "1: air"), words(sketch));
    }

    @Test
    void airInARestThatIsNotWrittenSaysSo() {
        Sketch sketch = new Sketch(1)
                .pull("1.3")
                .rest(PUSH)
                .air(AirUse.FULL)
                .unwritten()
                .push("1.3");
        assertEquals(List.of("1: air before"), words(sketch));
    }

    @Test
    void noPressNoWord() {
        assertEquals(List.of(), words(new Sketch(1).push("1.3").pull("1.3")));
    }

    @Test
    void theLegendExplainsTheWordsThatOccur() {
        Sketch sketch = new Sketch(1).push("1.3").air(AirUse.LIGHT);
        assertEquals(List.of("light air: press the air button lightly"), Texts.legend(new Air(), sketch.arrangement()));
        sketch.air(AirUse.FULL).rest(PUSH).air(AirUse.FULL).unwritten();
        assertEquals(
                List.of(
                        "air: press the air button as far as needed",
                        "air before: press the air button in the pause before the note"),
                Texts.legend(new Air(), sketch.arrangement()));
    }

    private static List<String> words(Sketch sketch) {
        return Texts.words(new Air(), sketch.arrangement());
    }
}
