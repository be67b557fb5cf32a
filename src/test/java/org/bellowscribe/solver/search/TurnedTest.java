package org.bellowscribe.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TurnedTest {

    private static Problem problem(List<Integer> order, boolean again, int margin, int startHigh) {
        int events = 1 + order.stream().mapToInt(Integer::intValue).max().orElseThrow();
        Option option = new Option(1, 0, List.of(new Move(0, 1, 2)));
        Set<Problem.Edge> edges = new LinkedHashSet<>();
        for (int i = 1; i < order.size(); i++) {
            edges.add(new Problem.Edge(order.get(i - 1), order.get(i)));
        }
        List<int[][]> pairs = edges.stream().map(edge -> new int[1][1]).toList();
        List<List<Option>> options =
                IntStream.range(0, events).mapToObj(e -> List.of(option)).toList();
        return new Problem(
                order,
                List.copyOf(edges),
                options,
                pairs,
                Collections.nCopies(events, Zones.FREE),
                0,
                20,
                again,
                margin,
                0,
                startHigh,
                1);
    }

    @Test
    void beginsAtTheLoopAndEndsWithThePickUp() {
        Problem turned = Turned.of(problem(List.of(0, 1, 2, 1, 2), true, 0, 20));
        assertEquals(List.of(1, 2, 1, 2, 0), turned.order());
        assertTrue(turned.edges().contains(new Problem.Edge(2, 0)));
    }

    @Test
    void anEventBetweenEndAndStartTakesUpTheMargin() {
        Problem turned = Turned.of(problem(List.of(0, 1, 2, 1, 2), true, 3, 20));
        assertEquals(List.of(1, 2, 1, 2, 3, 0), turned.order());
        assertEquals(new Move(0, 0, 3), turned.options().get(3).get(0).moves().get(0));
    }

    @Test
    void playedOnceTheEndMayLieAnywhere() {
        Problem turned = Turned.of(problem(List.of(0, 1, 2, 1, 2), false, 0, 20));
        assertEquals(new Move(0, 0, 20), turned.options().get(3).get(1).moves().get(0));
    }

    @Test
    void staysAsItIsWithoutALoopWithOneAtTheStartOrWithAGivenStart() {
        for (Problem problem : List.of(
                problem(List.of(0, 1, 2), true, 0, 20),
                problem(List.of(0, 1, 0, 1, 2), true, 0, 20),
                problem(List.of(0, 1, 2, 1, 2), true, 0, 5))) {
            assertSame(problem, Turned.of(problem));
        }
    }

    @Test
    void goesBackToTheGivenEvents() {
        assertArrayEquals(
                new int[] {7, 8, 9}, Turned.back(new int[] {7, 8, 9, 1}, problem(List.of(0, 1, 2, 1, 2), true, 3, 20)));
    }

    /** The start may be given too: then nothing is turned, and the least over all starts is that of the turned problem. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void leastOverAllGivenStartsIsTheLeast(int seed) {
        Problem free = RandomProblem.charged(seed, 8, 3, 3);
        int least = Integer.MAX_VALUE;
        for (int start = free.lowest(); start <= free.highest(); start++) {
            Problem given = new Problem(
                    free.order(),
                    free.edges(),
                    free.options(),
                    free.pairs(),
                    free.zones(),
                    free.lowest(),
                    free.highest(),
                    free.again(),
                    free.margin(),
                    start,
                    start,
                    1);
            least = Math.min(least, Search.solve(given, Long.MAX_VALUE).cost());
        }
        assertEquals(least, Search.solve(free, Long.MAX_VALUE).cost());
    }
}
