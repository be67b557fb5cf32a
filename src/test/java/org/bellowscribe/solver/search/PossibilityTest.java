package org.bellowscribe.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PossibilityTest {

    private static final long PLENTY = 1_000_000;

    @Test
    void itFindsAnAnswerWhereTheSearchWithCostsDoes() {
        int possible = 0;
        for (int seed = 0; seed < 600; seed++) {
            Problem problem = RandomProblem.charged(seed, 4 + seed % 9, 3, 1 + seed % 6);
            boolean isFound = Search.solve(problem, PLENTY).isFound();
            Possibility possibility = Possibility.of(problem, PLENTY);
            assertEquals(isFound, possibility.isFound(), "seed " + seed);
            assertTrue(possibility.isProved(), "seed " + seed);
            possible += isFound ? 1 : 0;
        }
        int found = possible;
        assertTrue(found > 60 && found < 540, () -> "too few of one kind to tell: " + found + " can be solved");
    }

    @Test
    void nothingIsProvedWhenTheWorkIsUsedUp() {
        long unknown = IntStream.range(0, 300)
                .mapToObj(seed -> Possibility.of(RandomProblem.of(seed, 12, 3, 2), 1))
                .filter(possibility -> !possibility.isProved())
                .peek(possibility -> assertEquals(false, possibility.isFound()))
                .count();
        assertTrue(unknown > 0, "the work is never used up");
    }
}
