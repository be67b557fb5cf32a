package org.bellowscribe.learning;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PointsProgramTest {

    private static final String HELD = "air-press";

    private final Table table = new Table(MarkedBook.USUAL, Set.of(HELD));

    private int index(String rule, String name) {
        for (int i = 0; i < table.size(); i++) {
            if (table.at(i).rule().equals(rule) && table.at(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException(rule + " " + name);
    }

    private static List<Planes.Plane> place(double[] difference) {
        return List.of(new Planes.Plane(difference, 1));
    }

    private double[] row(int index, double count) {
        double[] row = new double[table.size()];
        row[index] = count;
        return row;
    }

    @Test
    void withoutRivalsThePointsStay() {
        double[] points = new PointsProgram(table, 10).solve(List.of());
        assertArrayEquals(table.points(), WholePoints.near(table, 10, List.of(), points));
    }

    // One row change more against five points elsewhere that nothing can move: row-change rises until it is one dearer.
    @Test
    void aRivalThatOnlyOneCaseCanMakeDearerRaisesThatCaseByJustEnough() {
        int row = index("row-change", "medium");
        int air = index(HELD, "long-note");
        double[] rival = row(row, 1);
        rival[air] = -2;
        List<List<Planes.Plane>> places = List.of(place(rival));
        double[] points = new PointsProgram(table, 10).solve(places);
        int[] whole = WholePoints.near(table, 10, places, points);
        assertEquals(13, points[row], 0.2);
        assertEquals(13, whole[row]);
        assertEquals(table.points()[air], whole[air]);
    }

    @Test
    void ofPlacesThatContradictEachOtherTheMoreFrequentDecide() {
        int row = index("row-change", "medium");
        int same = index("same-finger", "medium");
        double[] up = row(row, 1);
        up[same] = -3;
        double[] down = row(row, -1);
        down[same] = 1;
        List<List<Planes.Plane>> places = List.of(place(up), place(up), place(up), place(down));
        int[] whole = WholePoints.near(table, 10, places, new PointsProgram(table, 10).solve(places));
        assertEquals(true, whole[row] - 3 * whole[same] >= 1, () -> whole[row] + " " + whole[same]);
    }

    @Test
    void pointsDoNotFallBelowNothing() {
        int row = index("row-change", "medium");
        List<List<Planes.Plane>> places = List.of(place(row(row, -1)));
        int[] whole = WholePoints.near(table, 10, places, new PointsProgram(table, 10).solve(places));
        assertEquals(0, whole[row]);
    }
}
