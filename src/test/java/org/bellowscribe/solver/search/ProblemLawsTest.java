package org.bellowscribe.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How the least cost must follow when a problem is changed; each problem is as hard as those of the other tests. */
class ProblemLawsTest {

    static IntStream seeds() {
        return IntStream.range(2000, 2060);
    }

    private static Problem problem(int seed) {
        return RandomProblem.of(seed, 10 + seed % 6, 4, 6);
    }

    // The same with a price on the opening.
    private static Problem charged(int seed) {
        return RandomProblem.charged(seed, 8 + seed % 5, 4, 6);
    }

    private static int cost(Problem problem) {
        Answer answer = Search.solve(problem, Long.MAX_VALUE);
        assertTrue(answer.isProved());
        return answer.cost();
    }

    private static List<List<Option>> options(Problem problem, UnaryOperator<Option> change) {
        return problem.options().stream()
                .map(ofEvent -> ofEvent.stream().map(change).toList())
                .toList();
    }

    private static Option withMoves(Option option, UnaryOperator<Move> change) {
        return new Option(
                option.sign(),
                option.cost(),
                option.moves().stream().map(change).toList());
    }

    private static Problem with(Problem p, List<List<Option>> options, List<int[][]> pairs) {
        return new Problem(
                p.order(),
                p.edges(),
                options,
                pairs,
                p.zones(),
                p.lowest(),
                p.highest(),
                p.again(),
                p.margin(),
                p.startLow(),
                p.startHigh(),
                1);
    }

    /** All air and the bellows with it: nothing but the unit changes, and whole numbers lose nothing. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void allAirDoubledCostsTheSame(int seed) {
        Problem p = problem(seed);
        List<List<Option>> doubled =
                options(p, option -> withMoves(option, move -> new Move(move.cost(), 2 * move.low(), 2 * move.high())));
        Problem larger = new Problem(
                p.order(),
                p.edges(),
                doubled,
                p.pairs(),
                p.zones(),
                2 * p.lowest(),
                2 * p.highest(),
                p.again(),
                2 * p.margin(),
                2 * p.startLow(),
                2 * p.startHigh(),
                1);
        assertEquals(cost(p), cost(larger));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void largerBellowsNeverCostMore(int seed) {
        Problem p = charged(seed);
        int before = cost(p);
        for (int more : new int[] {1, 3, 10}) {
            Problem larger = new Problem(
                    p.order(),
                    p.edges(),
                    p.options(),
                    p.pairs(),
                    p.zones(),
                    p.lowest(),
                    p.highest() + more,
                    p.again(),
                    p.margin(),
                    p.startLow(),
                    p.startHigh() + more,
                    1);
            int cost = cost(larger);
            assertTrue(cost <= before, cost + " after " + before);
            before = cost;
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void pointsMoreNeverMakeItCheaper(int seed) {
        Problem p = charged(seed);
        Random random = new Random(seed);
        List<int[][]> pairs = new ArrayList<>();
        for (int[][] points : p.pairs()) {
            int[][] more = new int[points.length][];
            for (int i = 0; i < points.length; i++) {
                more[i] = points[i].clone();
                more[i][random.nextInt(more[i].length)] += random.nextInt(5);
            }
            pairs.add(more);
        }
        List<List<Option>> options =
                options(p, option -> new Option(option.sign(), option.cost() + random.nextInt(3), option.moves()));
        assertTrue(cost(with(p, options, p.pairs())) >= cost(p));
        assertTrue(cost(with(p, p.options(), pairs)) >= cost(p));
    }

    /** Push for pull and open for closed: the same problem in a mirror. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void mirroredBellowsCostTheSame(int seed) {
        Problem p = charged(seed);
        List<List<Option>> mirrored = options(p, option -> new Option(-option.sign(), option.cost(), option.moves()));
        List<Zones> zones =
                p.zones().stream().map(each -> mirrored(each, p.highest())).toList();
        assertEquals(cost(p), cost(p.with(mirrored, p.pairs(), zones)));
    }

    // Opening x becomes opening most - x.
    private static Zones mirrored(Zones zones, int most) {
        int count = zones.from().length;
        int[] from = new int[count];
        int[] points = new int[count];
        for (int z = 0; z < count; z++) {
            from[z] = z == 0 ? 0 : most + 1 - zones.from()[count - z];
            points[z] = zones.points()[count - 1 - z];
        }
        return new Zones(from, points);
    }

    /** A price on the opening never makes a problem cheaper, and a dearer one never cheaper than that. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aPriceOnTheOpeningNeverMakesItCheaper(int seed) {
        Problem p = charged(seed);
        List<Zones> dearer = p.zones().stream().map(each -> each.times(2)).toList();
        List<Zones> free = p.zones().stream().map(each -> each.times(0)).toList();
        int cost = cost(p);
        assertTrue(cost(p.with(p.options(), p.pairs(), free)) <= cost);
        assertTrue(cost(p.with(p.options(), p.pairs(), dearer)) >= cost);
    }
}
