package org.bellowscribe.annotation.mark;

import static org.bellowscribe.instrument.BellowsDirection.PULL;
import static org.bellowscribe.instrument.BellowsDirection.PUSH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.annotation.Sketch;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.solver.AirUse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bellows hold 12 RU.s. */
class OpeningTest {

    @ParameterizedTest
    @CsvSource({
        "0, closed",
        "1400, closed",
        "1600, open 1/4",
        "3400, open 1/4",
        "3600, open 1/3",
        "6000, open 1/2",
        "7500, open 2/3",
        "9000, open 3/4",
        "11000, wide open"
    })
    void theNearestFractionIsSaid(int opening, String text) {
        assertEquals(List.of("0: " + text), words(new Sketch(1).push("1.3").open(opening)));
    }

    @Test
    void onlyTheFirstNoteSaysIt() {
        Sketch sketch = new Sketch(1)
                .rest(PUSH)
                .open(0)
                .push("1.3")
                .open(6000)
                .pull("1.3")
                .open(0);
        assertEquals(List.of("1: open 1/2"), words(sketch));
    }

    @Test
    void aRestInWhichTheBellowsAlreadyMoveSaysItWithTheOpeningThere() {
        Sketch air =
                new Sketch(1).rest(PULL).open(2900).air(AirUse.FULL).push("1.3").open(6000);
        assertEquals(List.of("0: open 1/4"), words(air));
        Sketch bass = new Sketch(1).rest(PUSH).open(9000).bass("G").push("1.3").open(6000);
        assertEquals(List.of("0: open 3/4"), words(bass));
    }

    @Test
    void everyTextOfTheShippedStylesIsUnderFifteenCharacters() {
        for (Style style : StyleLibrary.all()) {
            for (int opening = 0; opening <= 12000; opening += 1000) {
                Sketch sketch = new Sketch(1).push("1.3").open(opening);
                String text =
                        Texts.words(new Opening(), sketch.arrangement(style)).get(0);
                assertTrue(text.length() - "0: ".length() < 15, text);
            }
        }
    }

    @Test
    void theLegendExplainsTheOpening() {
        assertEquals(
                List.of("open 1/2: how far the bellows are open at the start"),
                Texts.legend(new Opening(), new Sketch(1).push("1.3").open(6000).arrangement()));
    }

    private static List<String> words(Sketch sketch) {
        return Texts.words(new Opening(), sketch.arrangement());
    }
}
