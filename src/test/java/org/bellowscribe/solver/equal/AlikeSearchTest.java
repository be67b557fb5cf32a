package org.bellowscribe.solver.equal;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
        return RandomProblem.of(seed, 6, 2, 2);
    }

    // The sign is the option and whether the air button is pressed.
    private static Twins twins(int seed, Problem problem) {
        int[][][] signs = new int[problem.size()][2][];
        for (int[][] ofEvent : signs) {
            ofEvent[0] = new int[] {0, 1};
            ofEvent[1] = new int[] {2, 3};
        }
        List<int[]> group = seed % 2 == 0
                ? List.of(new int[] {0, 1}, new int[] {2, 3}, new int[] {4, 5})
                : List.of(new int[] {0, 1}, new int[] {4, 5});
        return new Twins(List.of(group), signs, PRICE);
    }

    private static Alike improve(Problem problem, Twins twins) {
        return AlikeSearch.improve(problem, twins, 100_000, 10, Search.solve(problem, 100_000, 10));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void leastCostLiesBetweenBoundAndAnswer(int seed) {
        Problem problem = problem(seed);
        Twins twins = twins(seed, problem);
        Answer answer = improve(problem, twins).answer();
        int least = BruteForce.cost(problem, (option, move) -> twins.cost(new Marks(option, move)));
        assertTrue(answer.lowerBound() <= least, answer.lowerBound() + " against " + least);
        assertTrue(answer.cost() >= least, answer.cost() + " against " + least);
        if (answer.isFound()) {
            Marks marks = Marks.of(answer);
            assertEquals(problem.cost(marks.option(), marks.move()) + twins.cost(marks), answer.cost());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void givenPatternsAreWeighedExactly(int seed) {
        Problem problem = problem(seed);
        Twins twins = twins(seed, problem);
        int[] pattern = {seed % 4, seed / 4 % 4};
        PatternProblem stated = new PatternProblem(
                problem,
                twins.groups().get(0).stream()
                        .map(measure -> new PatternProblem.Wanted(measure, PRICE, twins.keeps(measure, pattern)))
                        .toList());
        int least =
                BruteForce.cost(problem, (option, move) -> PRICE * against(pattern, twins, new Marks(option, move)));
        assertEquals(least, Search.solve(stated.stated(), 100_000, 10).cost());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void priceOfPlayingAMeasureAsItsFellowIsNeverUnderstated(int seed) {
        Problem problem = problem(seed);
        Twins twins = twins(seed, problem);
        Alike alike = improve(problem, twins);
        for (Difference difference : alike.differences()) {
            int[] pattern = twins.patterns(Marks.of(alike.answer()))[0];
            int[] measure = {difference.measure(), difference.measure() + 1};
            int least = BruteForce.cost(problem, (option, move) -> {
                Marks marks = new Marks(option, move);
                boolean same = Arrays.equals(pattern, twins.signs(measure, marks));
                return same ? twins.cost(marks) : PatternProblem.FORBIDDEN;
            });
            boolean impossible = least >= PatternProblem.FORBIDDEN;
            assertEquals(impossible, difference.dearer() == Difference.IMPOSSIBLE);
            assertTrue(
                    impossible || difference.dearer() >= least - alike.answer().cost());
        }
    }

    private static int against(int[] pattern, Twins twins, Marks marks) {
        return (int) twins.groups().get(0).stream()
                .filter(measure -> !Arrays.equals(pattern, twins.signs(measure, marks)))
                .count();
    }
}
