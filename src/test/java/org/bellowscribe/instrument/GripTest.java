package org.bellowscribe.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.theory.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Home of the Anglo: John Kirkpatrick, "How to Play the Anglo" 1, The Concertina Newsletter 9 (1972). */
class GripTest {

    private static final Grip ANGLO = new Grip(true, 5, 6);

    private static Button button(int number) {
        return new Button(1, number, new Pitch(60), null, number <= 5 ? Hand.LEFT : Hand.RIGHT);
    }

    @ParameterizedTest(name = "button {0}: finger {1}")
    @CsvSource({"1, 4", "3, 3", "4, 2", "5, 1", "6, 1", "7, 2", "8, 3", "9, 4"})
    void publishedHomeFingersLieOnTheirButtons(int number, int finger) {
        assertEquals(finger, ANGLO.fingers(button(number), 1).get(0));
        assertTrue(ANGLO.isHome(button(number), 1, finger));
    }

    @Test
    void fifthColumnIsAStretchOfTheLittleFinger() {
        for (int number : new int[] {2, 10}) {
            assertEquals(4, ANGLO.fingers(button(number), 1).get(0));
            assertFalse(ANGLO.isHome(button(number), 1, 4));
        }
    }

    @Test
    void ringFingerStretchesWhereTheLittleFingerIsTaken() {
        assertEquals(List.of(4, 3), ANGLO.fingers(button(2), 1));
        assertEquals(List.of(4, 3), ANGLO.fingers(button(9), 1));
        assertFalse(ANGLO.isHome(button(9), 1, 3));
    }

    @Test
    void onlyInstrumentsWithButtonsForBothHandsAreStrapped() throws DiagnosedException {
        assertEquals(ANGLO, InstrumentLibrary.find("anglo-cg-20").grip());
        assertEquals(ANGLO, InstrumentLibrary.find("anglo-cg-30").grip());
        assertEquals(Grip.MOVING, InstrumentLibrary.find("dg-21").grip());
        assertEquals(
                Grip.MOVING,
                InstrumentLibrary.find("samples/instruments/left-handed.xml").grip());
    }

    @Test
    void handThatMovesHasOneFingerForAButton() {
        assertEquals(List.of(1), Grip.MOVING.fingers(button(2), 3));
        assertEquals(List.of(4), Grip.MOVING.fingers(button(7), 3));
        assertEquals(List.of(), Grip.MOVING.fingers(button(8), 3));
    }
}
