package org.bellowscribe.solver.equal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.bellowscribe.solver.search.Answer;
import org.bellowscribe.solver.search.BruteForce;
import org.bellowscribe.solver.search.Problem;
import org.bellowscribe.solver.search.RandomProblem;
import org.bellowscribe.solver.search.Search;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against trying everything, on tiny problems of six events: three measures of two events, two or all three equal. */
class AlikeSearchTest {

    private static final int PRICE = 3;

    static IntStream seeds() {
        return IntStream.range(0, 60).filter(seed -> problem(seed).edges().contains(new Problem.Edge(4, 5)));
    }

    private static Problem problem(int seed) {
        return seed % 3 == 0 ? RandomProblem.charged(seed, 6, 2, 2) : RandomProblem.of(seed, 6, 2, 2);
    }

    // The sign is the option and whether the air button is pressed.
    private static EqualGroups groups(int seed, Problem problem) {
        int[][][] signs = new int[problem.size()][2][];
        for (int[][] ofEvent : signs) {
            ofEvent[0] = new int[] {0, 1};
            ofEvent[1] = new int[] {2, 3};
        }
        List<int[]> group = seed % 2 == 0
                ? List.of(new int[] {0, 1}, new int[] {2, 3}, new int[] {4, 5})
                : List.of(new int[] {0, 1}, new int[] {4, 5});
        return new EqualGroups(List.of(group), signs, PRICE);
    }

    private static Alike improve(Problem problem, EqualGroups groups) {
        return AlikeSearch.improve(problem, groups, 100_000, Search.solve(problem, 100_000));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void leastCostLiesBetweenBoundAndAnswer(int seed) {
        Problem problem = problem(seed);
        EqualGroups groups = groups(seed, problem);
        Answer answer = improve(problem, groups).answer();
        int least = BruteForce.cost(problem, (option, move) -> groups.cost(new Marks(option, move)));
        assertTrue(answer.lowerBound() <= least, answer.lowerBound() + " against " + least);
        assertTrue(answer.cost() >= least, answer.cost() + " against " + least);
        if (answer.isFound()) {
            Marks marks = Marks.of(answer);
            int openings = problem.openingCost(answer.openingsFound());
            assertEquals(problem.cost(marks.option(), marks.move()) + openings + groups.cost(marks), answer.cost());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void givenPatternsAreWeighedExactly(int seed) {
        Problem problem = problem(seed);
        EqualGroups groups = groups(seed, problem);
        int[] pattern = {seed % 4, seed / 4 % 4};
        PatternProblem stated = new PatternProblem(
                problem,
                groups.list().get(0).stream()
                        .map(measure -> new PatternProblem.Wanted(measure, PRICE, groups.keeps(measure, pattern)))
                        .toList());
        int least =
                BruteForce.cost(problem, (option, move) -> PRICE * against(pattern, groups, new Marks(option, move)));
        assertEquals(least, Search.solve(stated.stated(), 100_000).cost());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void priceOfPlayingAMeasureAsItsFellowIsNeverUnderstated(int seed) {
        Problem problem = problem(seed);
        EqualGroups groups = groups(seed, problem);
        Alike alike = improve(problem, groups);
        for (Outlier difference : alike.differences()) {
            int[] pattern = groups.patterns(Marks.of(alike.answer()))[0];
            Marks answer = Marks.of(alike.answer());
            List<int[]> bound = groups.list().get(0).stream()
                    .filter(measure ->
                            measure[0] == difference.measure() || Arrays.equals(pattern, groups.signs(measure, answer)))
                    .toList();
            int least = BruteForce.cost(problem, (option, move) -> {
                Marks marks = new Marks(option, move);
                boolean same = bound.stream().allMatch(measure -> Arrays.equals(pattern, groups.signs(measure, marks)));
                return same ? groups.cost(marks) : PatternProblem.FORBIDDEN;
            });
            boolean impossible = least >= PatternProblem.FORBIDDEN;
            assertEquals(impossible, difference.dearer() == Outlier.IMPOSSIBLE);
            assertTrue(
                    impossible || difference.dearer() >= least - alike.answer().cost());
        }
    }

    @ParameterizedTest
    @MethodSource("manySeeds")
    void measureIsPlayedAsItsFellowsWhereThatCostsNothing(int seed) {
        Problem problem = problem(seed);
        for (Outlier difference : improve(problem, groups(seed, problem)).differences()) {
            assertNotEquals(0, difference.dearer(), difference.toString());
        }
    }

    static IntStream manySeeds() {
        return IntStream.range(0, 150).filter(seed -> problem(seed).edges().contains(new Problem.Edge(4, 5)));
    }

    private static int against(int[] pattern, EqualGroups groups, Marks marks) {
        return (int) groups.list().get(0).stream()
                .filter(measure -> !Arrays.equals(pattern, groups.signs(measure, marks)))
                .count();
    }
}
