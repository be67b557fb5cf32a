package org.bellowscribe.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.bellowscribe.replay.PlayedMeasure;
import org.junit.jupiter.api.Test;

class CurveRowsTest {

    private double time;
    private int place;

    private List<PlayedMeasure> section(int measures) {
        List<PlayedMeasure> section = new ArrayList<>();
        IntStream.range(0, measures).forEach(i -> section.add(measure(2)));
        return section;
    }

    private PlayedMeasure measure(double seconds) {
        PlayedMeasure measure = new PlayedMeasure(place, "1", 1, 1, place, place + 1, time, time + seconds);
        time += seconds;
        place++;
        return measure;
    }

    private static List<List<Integer>> sizes(List<List<PlayedMeasure>> sections) {
        return CurveRows.of(sections, 16).stream()
                .map(row -> row.sections().stream().map(List::size).toList())
                .toList();
    }

    @Test
    void twoSectionsOfEightShareARow() {
        assertEquals(
                List.of(List.of(8, 8), List.of(8, 8)), sizes(List.of(section(8), section(8), section(8), section(8))));
    }

    @Test
    void sectionThatDoesNotFitBeginsARow() {
        assertEquals(List.of(List.of(8), List.of(16)), sizes(List.of(section(8), section(16))));
    }

    @Test
    void longSectionIsPartedEvenly() {
        assertEquals(List.of(List.of(12), List.of(12)), sizes(List.of(section(24))));
    }

    @Test
    void pickUpFindsRoom() {
        List<PlayedMeasure> first = new ArrayList<>(List.of(measure(0.5)));
        first.addAll(section(16));
        assertEquals(List.of(List.of(17)), sizes(List.of(first)));
    }
}
