package org.bellowscribe.annotation.mark;

import static org.bellowscribe.instrument.BellowsDirection.PUSH;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Sketch;
import org.bellowscribe.solver.AirUse;
import org.junit.jupiter.api.Test;

class AirOnCountTest {

    private static List<String> words(Sketch sketch) {
        return Texts.words(new AirOnCount(), sketch.arrangement());
    }

    @Test
    void thePressStandsWithItsCount() {
        assertEquals(
                List.of("2: press on 2"),
                words(new Sketch(1)
                        .push("1.3")
                        .push("1.4")
                        .push("1.5")
                        .air(AirUse.FULL)
                        .push("1.4")));
    }

    @Test
    void aLightPressSaysSo() {
        assertEquals(
                List.of("1: light on &"),
                words(new Sketch(1).push("1.3").push("1.4").air(AirUse.LIGHT)));
    }

    @Test
    void whereTheBellowsTurnTheDirectionStandsToo() {
        assertEquals(
                List.of("1: pull", "1: press on &"),
                words(new Sketch(1).push("1.3").pull("1.4").air(AirUse.FULL)));
    }

    @Test
    void airInARestThatIsNotWrittenHasNoCount() {
        assertEquals(
                List.of("1: air before"),
                words(new Sketch(1)
                        .pull("1.3")
                        .rest(PUSH)
                        .air(AirUse.FULL)
                        .unwritten()
                        .push("1.3")));
    }

    @Test
    void withoutAirThereIsNothing() {
        assertEquals(List.of(), words(new Sketch(1).push("1.3").pull("1.4")));
    }
}
