package org.bellowscribe.difficulty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class FigureTest {

    private static final double EXACT = 1e-12;

    @Test
    void theHardestEightSecondsCount() {
        Figure figure = Figure.aSecond(
                List.of(new Moment(0, 1, 0), new Moment(20, 2, 1), new Moment(27.9, 2, 2), new Moment(28.1, 1, 3)));
        assertEquals(4 / 8.0, figure.value(), EXACT);
        assertEquals(1, figure.event());
    }

    @Test
    void whatIsShorterThanAStretchCountsAsOne() {
        assertEquals(1 / 8.0, Figure.aSecond(List.of(new Moment(0, 1, 0))).value(), EXACT);
    }

    @Test
    void notesInARowAreCountedWithoutTime() {
        List<Moment> moments =
                List.of(new Moment(0, 1, 0), new Moment(100, 0, 1), new Moment(200, 1, 2), new Moment(300, 1, 3));
        assertEquals(2, Figure.inARow(moments, 2).value(), EXACT);
        assertEquals(2, Figure.inARow(moments, 2).event());
        assertEquals(3, Figure.inARow(moments, 99).value(), EXACT);
    }

    @Test
    void twiceAsQuickCountsFourTimesUpToFour() {
        assertEquals(1, Moment.bySpeed(0.25), EXACT);
        assertEquals(0.25, Moment.bySpeed(0.5), EXACT);
        assertEquals(4, Moment.bySpeed(0.125), EXACT);
        assertEquals(4, Moment.bySpeed(0.05), EXACT);
        assertEquals(4, Moment.bySpeed(0), EXACT);
    }
}
