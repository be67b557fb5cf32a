package org.bellowscribe.solver.equal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.bellowscribe.solver.search.Move;
import org.bellowscribe.solver.search.Option;
import org.bellowscribe.solver.search.Problem;
import org.bellowscribe.solver.search.Zones;
import org.junit.jupiter.api.Test;

/** Equal measures of two events with two options each; a measure that differs pays 3 points, 12 quarters. */
class RelaxationTest {

    private static final int STEP = 10;

    private static Problem problem(int events) {
        Option option = new Option(1, 0, List.of(new Move(0, 0, 1)));
        List<Problem.Edge> edges = new ArrayList<>();
        for (int e = 1; e < events; e++) {
            edges.add(new Problem.Edge(e - 1, e));
        }
        List<int[][]> pairs = edges.stream().map(edge -> new int[2][2]).toList();
        List<Integer> order = IntStream.range(0, events).boxed().toList();
        List<List<Option>> options =
                order.stream().map(e -> List.of(option, option)).toList();
        return new Problem(
                order, edges, options, pairs, Collections.nCopies(events, Zones.FREE), 0, 9, false, 0, 0, 9, 1);
    }

    // The group may have option 0 at the first event of its measures only, all of them play option 1 there, and the
    // multipliers
    // have followed that.
    private static long costOfTheGroup(int measures) {
        int events = 2 * measures;
        int[][][] signs = new int[events][][];
        Arrays.setAll(signs, e -> new int[][] {{0}, {1}});
        List<int[]> group = IntStream.range(0, measures)
                .mapToObj(m -> new int[] {2 * m, 2 * m + 1})
                .toList();
        EqualGroups groups = new EqualGroups(List.of(group), signs, 3);
        Kinds kinds = new Kinds(groups);
        Marks oneDiffers = new Marks(new int[events], new int[events]);
        oneDiffers.option()[0] = 1;
        Block first = new Block(groups, kinds).parts(oneDiffers).get(0);
        Relaxation relaxation = new Relaxation(problem(events), groups, kinds).narrowed(first);
        Marks allDiffer = new Marks(new int[events], new int[events]);
        Arrays.setAll(allDiffer.option(), e -> e % 2 == 0 ? 1 : 0);
        relaxation.follow(allDiffer, new GroupMarks(new int[events], new boolean[events]), STEP);
        return relaxation.solveGroups(allDiffer, GroupMarks.none(events));
    }

    @Test
    void oneMeasureOfAGroupKeepsToWhatIsAllowed() {
        assertEquals(-2 * STEP + STEP, costOfTheGroup(3));
    }

    /** A group of seven is cut after six: the one that keeps to what is allowed may be the seventh. */
    @Test
    void inAPartOfALargeGroupAllMayDiffer() {
        assertEquals(-6 * STEP, costOfTheGroup(7));
    }
}
