package org.bellowscribe.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WhyNoneTest {

    private final Table table = new Table(MarkedBook.USUAL, Set.of());
    private final WhyNone why = new WhyNone(table);

    private double[] row(double... first) {
        double[] row = new double[table.size()];
        System.arraycopy(first, 0, row, 0, first.length);
        return row;
    }

    @Test
    void aRivalThatMeetsSomeCaseMoreOftenCanBeMadeDearer() {
        assertEquals("", why.of(List.of(row(1, -3))));
    }

    @Test
    void aRivalThatMeetsNoCaseMoreOftenIsNeverDearer() {
        assertEquals(
                "other marks meet no rule more often, and these less often: air-press full",
                why.of(List.of(row(0, 0, 0, 0, 0, 0, -1))));
    }

    @Test
    void aRivalThatMeetsEveryCaseAsOftenCannotBeToldApart() {
        assertEquals("other marks meet every rule just as often", why.of(List.of(row(0))));
    }

    @Test
    void twoRivalsThatEachNeedTheOppositeCannotBothBeMadeDearer() {
        assertEquals(
                "of 2 other ways to mark it, each is better where the marks would have to be better than the rest",
                why.of(List.of(row(2, -1), row(-2, 1))));
    }
}
