package org.bellowscribe.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.junit.jupiter.api.Test;

/** Numbers as published: John Kirkpatrick, "How to Play the Anglo" 1, The Concertina Newsletter 9 (1972). */
class ConcertinaNumbersTest {

    private static List<Integer> numbers(String id, int row) throws DiagnosedException {
        Instrument instrument = InstrumentLibrary.find(id);
        ConcertinaNumbers numbers = new ConcertinaNumbers(instrument);
        return instrument.buttons().stream()
                .filter(button -> button.row() == row)
                .map(numbers::of)
                .toList();
    }

    @Test
    void rowOfCIsOneToTenAndRowOfGElevenToTwenty() throws DiagnosedException {
        assertEquals(List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10), numbers("anglo-cg-20", 1));
        assertEquals(List.of(11, 12, 13, 14, 15, 16, 17, 18, 19, 20), numbers("anglo-cg-20", 2));
        assertEquals(numbers("anglo-cg-20", 1), numbers("anglo-cg-30", 2));
        assertEquals(numbers("anglo-cg-20", 2), numbers("anglo-cg-30", 3));
    }

    @Test
    void accidentalsFollow() throws DiagnosedException {
        assertEquals(List.of(21, 22, 23, 24, 25, 26, 27, 28, 29, 30), numbers("anglo-cg-30", 1));
    }

    @Test
    void firstFiveOfEveryTenAreTheLeftHand() throws DiagnosedException {
        Instrument instrument = InstrumentLibrary.find("anglo-cg-30");
        ConcertinaNumbers numbers = new ConcertinaNumbers(instrument);
        for (Button button : instrument.buttons()) {
            assertEquals(button.hand() == Hand.LEFT, (numbers.of(button) - 1) % 10 < 5, button.id());
        }
    }
}
