package org.bellowscribe.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.bellowscribe.score.TuneText;
import org.junit.jupiter.api.Test;

class StripTest {

    private static List<String> names(String text, List<Integer> order) {
        return Strip.of(PlayedMeasure.of(TuneText.of(text, 120, order))).stream()
                .map(Strip::name)
                .toList();
    }

    @Test
    void eachPlayingOfASectionIsAStrip() {
        assertEquals(
                List.of("Measures 1–2, 1st time", "Measures 1–2, 2nd time", "Measure 3"),
                names("C4*4 | D4*4 | E4*4", List.of(0, 1, 0, 1, 2)));
    }

    @Test
    void aSecondPlayingAndASecondEndingBeginStrips() {
        assertEquals(
                List.of("Measures 1–2, 1st time", "Measure 1, 2nd time", "Measure 3"),
                names("C4*4 | D4*4 | E4*4", List.of(0, 1, 0, 2)));
    }

    @Test
    void aLongSectionIsPartedEvenly() {
        String text = String.join(" | ", Collections.nCopies(16, "C4*4"));
        assertEquals(
                List.of("Measures 1–8", "Measures 9–16"),
                names(text, IntStream.range(0, 16).boxed().toList()));
    }

    @Test
    void playsAreCountedThroughAllStrips() {
        List<Strip> strips = Strip.of(PlayedMeasure.of(TuneText.of("C4 D4 | E4", 120, List.of(0, 1, 0, 1))));
        assertEquals(3, strips.get(1).first());
        assertEquals(6, strips.get(1).end());
    }
}
