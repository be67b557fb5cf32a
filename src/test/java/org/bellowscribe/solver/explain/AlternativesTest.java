package org.bellowscribe.solver.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.replay.Replay;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Task;
import org.junit.jupiter.api.Test;

class AlternativesTest {

    private static List<Alternative> ways(Task task, int count) {
        return Alternatives.of(task, Lesson.solve(task), count);
    }

    private static int differentNotes(Solution one, Solution other) {
        int different = 0;
        for (int e = 0; e < one.steps().size(); e++) {
            Step a = one.steps().get(e);
            Step b = other.steps().get(e);
            boolean same = a.direction() == b.direction() && a.buttons().equals(b.buttons());
            different += same || a.buttons().isEmpty() ? 0 : 1;
        }
        return different;
    }

    /** The lesson has 12 notes: 15 percent of them are 2. */
    @Test
    void everyWayDiffersFromEveryOtherInAtLeastTwoNotes() {
        Task task = Lesson.task();
        List<Solution> all = new ArrayList<>(List.of(Lesson.solve(task)));
        ways(task, 3).forEach(way -> all.add(way.solution()));
        assertTrue(all.size() > 1);
        for (int i = 0; i < all.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertTrue(differentNotes(all.get(i), all.get(j)) >= 2, i + " and " + j);
            }
        }
    }

    @Test
    void waysCanBePlayedAndAreBilledWithTheTruePoints() {
        Task task = Lesson.task();
        int least = Lesson.solve(task).cost().total();
        int before = least;
        for (Alternative way : ways(task, 3)) {
            assertEquals(List.of(), Replay.check(task.tune(), task.instrument(), way.solution()));
            assertTrue(way.solution().cost().total() >= before);
            assertTrue(way.solution().cost().total() <= 2 * least);
            assertFalse(way.solution().cost().byRule().containsKey("apart"));
            before = way.solution().cost().total();
        }
    }

    @Test
    void askedForNoneThereIsNone() {
        assertEquals(List.of(), ways(Lesson.task(), 0));
    }

    @Test
    void pinsHoldInEveryWay() {
        BellowsDirection other =
                Lesson.solve(Lesson.task()).steps().get(2).direction().opposite();
        Task task = Lesson.task(Pin.at(2).direction(other));
        for (Alternative way : ways(task, 3)) {
            assertEquals(other, way.solution().steps().get(2).direction());
        }
    }
}
