package org.bellowscribe.lefthand;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class EliminationTest {

    private static final int VALUES = 3;

    @Test
    void nothingElseCostsLess() {
        for (int seed = 0; seed < 40; seed++) {
            Random random = new Random(seed);
            int variables = 2 + random.nextInt(6);
            int[][][] points = new int[variables][variables][];
            Elimination elimination = new Elimination(variables, VALUES);
            for (int i = 0; i < variables; i++) {
                points[i][i] = random.ints(VALUES, 0, 10).toArray();
                elimination.alone(i, points[i][i]);
                for (int j = i + 1; j < variables; j++) {
                    if (j == i + 1 || random.nextInt(3) == 0) {
                        points[i][j] = random.ints(VALUES * VALUES, 0, 10).toArray();
                        elimination.pair(i, j, points[i][j]);
                    }
                }
            }
            assertEquals(cheapest(points), cost(points, elimination.solve()), "seed " + seed);
            assertTrue(elimination.isExact());
        }
    }

    @Test
    void equalValuesGiveTheLowest() {
        Elimination elimination = new Elimination(3, VALUES);
        elimination.pair(0, 1, new int[VALUES * VALUES]);
        assertArrayEquals(new int[] {0, 0, 0}, elimination.solve());
    }

    @Test
    void tooManyNeighborsAreSaidToBeNoProof() {
        Elimination elimination = new Elimination(10, 4);
        int[] unlike = new int[16];
        for (int i = 0; i < 4; i++) {
            unlike[5 * i] = 1;
        }
        for (int i = 0; i < 10; i++) {
            for (int j = i + 1; j < 10; j++) {
                elimination.pair(i, j, unlike);
            }
        }
        int[] values = elimination.solve();
        assertFalse(elimination.isExact());
        int alike = 0;
        for (int i = 0; i < 10; i++) {
            for (int j = i + 1; j < 10; j++) {
                alike += values[i] == values[j] ? 1 : 0;
            }
        }
        // Ten variables on four values as evenly as can be: 3 + 3 + 1 + 1 equal pairs.
        assertEquals(8, alike);
    }

    private static int cheapest(int[][][] points) {
        int least = Integer.MAX_VALUE;
        int all = (int) Math.pow(VALUES, points.length);
        for (int code = 0; code < all; code++) {
            int rest = code;
            int[] values = new int[points.length];
            for (int i = 0; i < values.length; i++) {
                values[i] = rest % VALUES;
                rest /= VALUES;
            }
            least = Math.min(least, cost(points, values));
        }
        return least;
    }

    private static int cost(int[][][] points, int[] values) {
        int sum = 0;
        for (int i = 0; i < values.length; i++) {
            sum += points[i][i][values[i]];
            for (int j = i + 1; j < values.length; j++) {
                sum += points[i][j] == null ? 0 : points[i][j][VALUES * values[i] + values[j]];
            }
        }
        return sum;
    }
}
