package org.bellowscribe.score;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class PlayOrderTest {

    private static final List<String> NUMBERS = List.of("0", "1", "2", "3", "X1");

    private static String sections(Integer... measures) {
        return new PlayOrder(List.of(measures)).sections(NUMBERS);
    }

    @Test
    void shortFormJoinsWhateverFollows() {
        assertEquals("1-2, 1-4, 3-4", new PlayOrder(List.of(0, 1, 0, 1, 2, 3, 2, 3)).shortForm());
    }

    @Test
    void sectionsAreShownEachTimeTheyArePlayed() {
        assertEquals("0-1, 0-1, 2-3, 2-3", sections(0, 1, 0, 1, 2, 3, 2, 3));
    }

    @Test
    void endingsAreNoSectionsOfTheirOwn() {
        assertEquals("0-1, 0, 2-3", sections(0, 1, 0, 2, 3));
    }

    @Test
    void numbersAreThosePrinted() {
        assertEquals("0-X1", sections(0, 1, 2, 3, 4));
    }
}
