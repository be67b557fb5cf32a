package org.bellowscribe.lefthand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.junit.jupiter.api.Test;

class LeftHandFingersTest {

    /** Quarters of half a second. */
    private static LeftHandFingers fingers(String buttons) {
        int count = buttons.split(" ").length;
        return fingers(TuneText.of("D4 ".repeat(count).strip(), 120), buttons);
    }

    private static LeftHandFingers fingers(Tune tune, String buttons) {
        LeftHandFingers fingers = LeftHandFingers.of(tune, Pressed.of(tune, buttons));
        assertTrue(fingers.least());
        return fingers;
    }

    @Test
    void aPairIsPlayedByTwoFingersOfAHandThatRests() {
        LeftHandFingers fingers = fingers("1.4 1.3 1.4 1.3");
        assertEquals(List.of(3, 2, 3, 2), fingers.fingers());
        assertEquals(0, fingers.points());
    }

    @Test
    void oneFingerPlaysTheSameButtonAgain() {
        LeftHandFingers fingers = fingers("1.2 1.1 1.1 1.2 1.1 1.1");
        assertEquals(List.of(3, 2, 2, 3, 2, 2), fingers.fingers());
        assertEquals(0, fingers.sameFinger());
    }

    @Test
    void twoPairsOfAColumnLieUnderFourFingers() {
        LeftHandFingers fingers = fingers("1.4 1.3 1.2 1.1 1.4 1.3 1.2 1.1 1.4 1.3");
        assertEquals(List.of(5, 4, 3, 2, 5, 4, 3, 2, 5, 4), fingers.fingers());
        assertEquals(0, fingers.handMoves());
    }

    @Test
    void anotherFingerCrossesToTheOtherColumn() {
        LeftHandFingers fingers = fingers("1.2 2.2 1.2 2.2");
        assertEquals(3, fingers.columnJumps());
        assertEquals(0, fingers.sameFinger());
        assertEquals(3, fingers.handMoves());
    }

    @Test
    void buttonsStruckTogetherHaveTheirOwnFingers() {
        assertEquals(List.of(2, 3), fingers("1.3+1.4").fingers());
    }

    @Test
    void countsAreThoseOfOnePlayingWithAllRepeats() {
        Tune tune = TuneText.of("D4 D4 | D4 D4", 120, List.of(0, 1, 0, 1));
        LeftHandFingers fingers = fingers(tune, "1.2 2.1! 1.2 2.1");
        assertEquals(7, fingers.columnJumps());
        assertEquals(2, fingers.thumbPresses());
    }

    @Test
    void aMoveWhileTheThumbPressesTheAirButtonCostsTwice() {
        // The little finger (1), and a move by two buttons in half a second (3).
        assertEquals(1 + 3, fingers("1.1 1.6").points());
        assertEquals(1 + 2 * 3, fingers("1.1 1.6!").points());
    }

    @Test
    void aJumpBackCountsToo() {
        // The way back from the last button to the first is what asks for the hand that covers both.
        Tune tune = TuneText.of("D4 D4 | D4 D4", 240, List.of(0, 0, 0, 1, 1, 1));
        LeftHandFingers fingers = fingers(tune, "1.1 1.4 1.4 1.1");
        assertEquals(List.of(2, 5, 5, 2), fingers.fingers());
    }

    @Test
    void aTuneWithoutLeftHandHasNoFingers() {
        LeftHandFingers fingers = fingers("- - -");
        assertEquals(List.of(), fingers.fingers());
        assertEquals(0, fingers.points());
    }

    @Test
    void everyChoiceOfFingersOfASmallTuneCostsAtLeastAsMuch() {
        Tune tune = TuneText.of("D4*1/2 D4 D4*1/4 | D4 D4*1/2 D4", 130, List.of(0, 1, 0, 0, 1, 1, 0));
        for (String buttons : List.of(
                "1.4 2.2 1.1 2.4 1.3 2.1",
                "1.4 1.1! 2.3 2.2 2.2! 1.4",
                "1.2 1.6 2.1 1.5 - 2.2",
                "1.3+2.3 1.1 2.3 - 1.2 1.1")) {
            List<Stroke> strokes = Stroke.of(Pressed.of(tune, buttons));
            assertEquals(cheapest(tune, strokes), fingers(tune, buttons).points(), buttons);
        }
    }

    private static int cheapest(Tune tune, List<Stroke> strokes) {
        List<Handover> handovers = Handover.all(tune, strokes);
        int least = Integer.MAX_VALUE;
        for (int code = 0; code < 1 << 2 * strokes.size(); code++) {
            int points = 0;
            for (int i = 0; i < strokes.size(); i++) {
                points += FingerPoints.of(strokes.get(i).button(), finger(code, i));
            }
            for (Handover each : handovers) {
                points += FingerPoints.of(
                        strokes.get(each.from()),
                        finger(code, each.from()),
                        strokes.get(each.to()),
                        finger(code, each.to()),
                        each.seconds());
            }
            least = Math.min(least, points);
        }
        return least;
    }

    private static int finger(int code, int stroke) {
        return 2 + (code >> 2 * stroke & 3);
    }
}
