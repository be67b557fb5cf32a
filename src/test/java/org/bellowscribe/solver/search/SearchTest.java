package org.bellowscribe.solver.search;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SearchTest {

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    static IntStream oracleSeeds() {
        return IntStream.range(1000, 1040);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void costEqualsBruteForce(int seed) {
        Problem problem = RandomProblem.of(seed, 4, 2, 2);
        Answer answer = Search.solve(problem, Long.MAX_VALUE);
        assertTrue(answer.isProved());
        assertEquals(BruteForce.cost(problem), answer.cost());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void costWithAPriceOnTheOpeningEqualsBruteForce(int seed) {
        Problem problem = RandomProblem.charged(seed, 4, 2, 2);
        Answer answer = Search.solve(problem, Long.MAX_VALUE);
        assertTrue(answer.isProved());
        assertEquals(BruteForce.cost(problem), answer.cost());
    }

    /** Points of 7 parts, so that costs are any numbers and the search goes on in steps of a point. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void costWithPartsOfAPointEqualsBruteForce(int seed) {
        Problem problem = RandomProblem.charged(seed, 4, 2, 2).withUnit(7);
        Answer answer = Search.solve(problem, Long.MAX_VALUE);
        assertTrue(answer.isProved());
        assertEquals(BruteForce.cost(problem), answer.cost());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("oracleSeeds")
    void costWithAPriceOnTheOpeningEqualsCpSat(int seed) {
        Problem problem = RandomProblem.charged(seed, 10 + seed % 6, 4, 6);
        Answer answer = Search.solve(problem, Long.MAX_VALUE);
        assertTrue(answer.isProved());
        assertEquals(CpSatOracle.costUpTo(answer.cost(), problem), answer.cost());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("oracleSeeds")
    void theAnswersOpeningsCostWhatItSays(int seed) {
        Problem problem = RandomProblem.charged(seed, 12, 4, 6);
        Answer answer = Search.solve(problem, Long.MAX_VALUE);
        if (answer.isFound()) {
            assertNotNull(answer.option());
            assertNotNull(answer.move());
            int marks = problem.cost(answer.option(), answer.move());
            assertEquals(answer.cost(), marks + problem.openingCost(answer.openingsFound()));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("oracleSeeds")
    void costEqualsCpSat(int seed) {
        Problem problem = RandomProblem.of(seed, 10 + seed % 6, 4, 6);
        Answer answer = Search.solve(problem, Long.MAX_VALUE);
        assertTrue(answer.isProved());
        assertEquals(CpSatOracle.costUpTo(answer.cost(), problem), answer.cost());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("oracleSeeds")
    void openingsAreWithinTheBellowsAndFitTheMoves(int seed) {
        Problem problem = RandomProblem.charged(seed, 12, 4, 6);
        Answer answer = Search.solve(problem, Long.MAX_VALUE);
        int[] openings = answer.openings();
        if (!answer.isFound()) {
            assertEquals(Integer.MAX_VALUE, answer.lowerBound());
            return;
        }
        assertNotNull(openings);
        assertNotNull(answer.option());
        assertNotNull(answer.move());
        for (int e = 0; e < problem.size(); e++) {
            Option option = problem.options().get(e).get(answer.option()[e]);
            Move move = option.moves().get(answer.move()[e]);
            int amount = option.sign() * (openings[2 * e + 1] - openings[2 * e]);
            assertTrue(amount >= move.low() && amount <= move.high(), "event " + e + ": " + amount + " of " + move);
            assertTrue(openings[2 * e] >= problem.lowest() && openings[2 * e] <= problem.highest());
        }
        problem.edges().forEach(edge -> assertEquals(openings[2 * edge.from() + 1], openings[2 * edge.to()]));
    }

    @Test
    void sameProblemGivesSameAnswer() {
        Problem problem = RandomProblem.of(7, 14, 4, 6);
        Answer first = Search.solve(problem, Long.MAX_VALUE);
        Answer second = Search.solve(problem, Long.MAX_VALUE);
        assertArrayEquals(first.option(), second.option());
        assertArrayEquals(first.openings(), second.openings());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("oracleSeeds")
    void workLimitGivesABoundInsteadOfAProof(int seed) {
        Problem problem = RandomProblem.of(seed, 40, 4, 6);
        Answer full = Search.solve(problem, Long.MAX_VALUE);
        Answer bounded = Search.solve(problem, 1);
        assertTrue(bounded.lowerBound() <= full.cost());
        assertTrue(bounded.cost() >= full.cost());
    }

    @Test
    void workLimitSeldomLeavesNoAnswerWhereThereIsOne() {
        int unproved = 0;
        int missed = 0;
        for (int seed = 1000; seed < 1040; seed++) {
            Problem problem = RandomProblem.of(seed, 40, 4, 6);
            Answer bounded = Search.solve(problem, 500);
            unproved += bounded.isProved() ? 0 : 1;
            missed +=
                    !bounded.isFound() && Search.solve(problem, Long.MAX_VALUE).isFound() ? 1 : 0;
        }
        assertTrue(unproved >= 5, unproved + " problems are too hard for the limit");
        assertTrue(missed <= 1, missed + " of them were left without an answer");
    }
}
