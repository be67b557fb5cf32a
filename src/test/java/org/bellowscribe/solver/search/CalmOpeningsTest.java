package org.bellowscribe.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CalmOpeningsTest {

    static IntStream seeds() {
        return IntStream.range(0, 120);
    }

    private static int[] times(int events) {
        return IntStream.range(0, events).map(e -> 1 + e % 3).toArray();
    }

    private static CalmOpenings.Comfort comfort(Problem problem) {
        int room = problem.highest();
        return new CalmOpenings.Comfort(room / 3, room - room / 3, times(problem.size()));
    }

    private static long unrest(int[] openings, CalmOpenings.Comfort comfort) {
        long sum = 0;
        for (int e = 0; e < comfort.time().length; e++) {
            for (int place : new int[] {2 * e, 2 * e + 1}) {
                int at = openings[place];
                int outside = Math.max(0, Math.max(comfort.low() - at, at - comfort.high()));
                sum += comfort.time()[e] * (1000L * outside + Math.abs(2 * at - comfort.low() - comfort.high()) / 2);
            }
        }
        return sum;
    }

    /** Against trying all openings that the marks may have at the same cost. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noOpeningsOfTheSameCostAreCalmer(int seed) {
        Problem problem = seed % 2 == 0 ? RandomProblem.of(seed, 5, 2, 2) : RandomProblem.charged(seed, 5, 2, 2);
        Answer answer = Search.solve(problem, Long.MAX_VALUE);
        if (!answer.isFound()) {
            return;
        }
        CalmOpenings.Comfort comfort = comfort(problem);
        int[] calm = CalmOpenings.of(problem, answer, comfort);
        assertEquals(problem.openingCost(answer.openingsFound()), problem.openingCost(calm));
        long[] least = {Long.MAX_VALUE};
        AllOpenings.of(problem, answer, openings -> {
            if (sameZones(problem, answer.openingsFound(), openings)) {
                least[0] = Math.min(least[0], unrest(openings, comfort));
            }
        });
        assertEquals(least[0], unrest(calm, comfort));
    }

    private static boolean sameZones(Problem problem, int[] given, int[] openings) {
        for (int e = 0; e < problem.size(); e++) {
            Zones zones = problem.zones().get(e);
            int[] around = zones.around(given[2 * e + 1], zones.at(given[2 * e + 1]));
            if (openings[2 * e + 1] < around[0] || openings[2 * e + 1] > around[1]) {
                return false;
            }
        }
        return true;
    }

    @Test
    void aPullAndAPushLieAroundTheMiddle() {
        Option pull = new Option(1, 0, List.of(new Move(0, 10, 10)));
        Option push = new Option(-1, 0, List.of(new Move(0, 10, 10)));
        Problem problem = new Problem(
                List.of(0, 1),
                List.of(new Problem.Edge(0, 1)),
                List.of(List.of(pull), List.of(push)),
                List.<int[][]>of(new int[1][1]),
                List.of(Zones.FREE, Zones.FREE),
                0,
                100,
                true,
                0,
                0,
                100,
                1);
        Answer answer = Search.solve(problem, Long.MAX_VALUE);
        int[] calm = CalmOpenings.of(problem, answer, new CalmOpenings.Comfort(20, 80, new int[] {1, 1}));
        assertTrue(calm[0] >= 40 && calm[0] <= 50, Arrays.toString(calm));
        assertArrayEquals(new int[] {calm[0], calm[0] + 10, calm[0] + 10, calm[0]}, calm);
    }
}
