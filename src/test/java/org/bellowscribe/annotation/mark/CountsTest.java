package org.bellowscribe.annotation.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.annotation.Sketch;
import org.junit.jupiter.api.Test;

class CountsTest {

    private static String counts(Sketch sketch) {
        return Texts.line(new Counts(), sketch.arrangement(), "counts");
    }

    @Test
    void quartersOfATwoTwoMeasureAreBeatsAndWhatIsBetween() {
        assertEquals(
                "1 & 2 &",
                counts(new Sketch(1).push("1.3").push("1.4").push("1.5").push("1.4")));
    }

    @Test
    void theNextMeasureBeginsAnew() {
        assertEquals(
                "1 & 1 &",
                counts(new Sketch(1)
                        .push("1.3")
                        .push("1.4")
                        .measure()
                        .push("1.5")
                        .push("1.4")));
    }

    @Test
    void theLegendExplainsTheFirstCount() {
        assertEquals(
                List.of("1: what is counted"),
                Texts.legend(new Counts(), new Sketch(1).push("1.3").arrangement()));
    }
}
