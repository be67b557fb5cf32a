package org.bellowscribe.score;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bellowscribe.theory.Fraction;
import org.junit.jupiter.api.Test;

class BarPlacesTest {

    /** Measures of 4/4 by their lengths in quarters; a bar before the length marks the start of a section. */
    private static String places(String lengths, Integer... order) {
        List<BarPlaces.Written> written = new ArrayList<>();
        for (String each : lengths.split(" ")) {
            boolean section = each.startsWith("|");
            written.add(new BarPlaces.Written(
                    Fraction.parse(section ? each.substring(1) : each), Fraction.of(4, 1), section));
        }
        List<Integer> played = order.length > 0
                ? List.of(order)
                : IntStream.range(0, written.size()).boxed().toList();
        Stream<String> places =
                BarPlaces.find(written, new PlayOrder(played)).stream().map(place -> place.numerator() + "");
        return String.join(" ", places.toList());
    }

    @Test
    void fullMeasuresBeginAtTheBarLine() {
        assertEquals("0 0", places("4 4"));
    }

    @Test
    void shortFirstMeasureIsAPickUp() {
        assertEquals("3 0 0", places("1 4 3"));
    }

    @Test
    void secondHalfOfACutBarBeginsWhereTheFirstEnds() {
        assertEquals("0 0 3 0", places("4 3 |1 4"));
    }

    @Test
    void pickUpToASectionAfterAFullMeasureIsAPickUp() {
        assertEquals("0 3 0", places("4 |1 4"));
    }

    @Test
    void shortMeasureElsewhereBeginsAtTheBarLine() {
        assertEquals("0 0 0", places("4 3 4"));
    }

    @Test
    void shortEndingsCompleteThePickUpAndBeginAtTheBarLine() {
        assertEquals("2 0 0 0", places("2 4 2 2", 0, 1, 2, 0, 1, 3));
    }

    @Test
    void overfullMeasureBeginsAtTheBarLine() {
        assertEquals("0 0", places("5 4"));
    }

    @Test
    void emptyMeasureIsPassedOver() {
        assertEquals("0 3 0", places("0 1 4"));
        assertEquals("0 0 0 3 0", places("4 4 |0 1 4"));
    }
}
