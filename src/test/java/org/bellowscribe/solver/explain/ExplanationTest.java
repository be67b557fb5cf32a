package org.bellowscribe.solver.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Task;
import org.junit.jupiter.api.Test;

class ExplanationTest {

    private static Explanation explain(Task task, int event) {
        return Explanation.of(task, Lesson.solve(task), event);
    }

    @Test
    void everyPriceIsThatOfSolvingWithThePin() {
        Task task = Lesson.task();
        Solution solution = Lesson.solve(task);
        for (Explanation.Candidate candidate : explain(task, 2).candidates()) {
            Solution forced = Lesson.solve(Lesson.task(candidate.pin()));
            assertEquals(
                    forced.cost().total() - solution.cost().total(),
                    candidate.comparison().points(),
                    candidate.pin().describe());
        }
    }

    @Test
    void candidatesAreAllOtherButtonsFingersSoundsAndUsesOfAir() {
        // A4 is 1.5 pushed, under any finger, and 2.3 pulled, which the little finger cannot reach; the third beat of
        // 4/4 in G wants the
        // bass or its stand-ins.
        List<String> words = explain(Lesson.task(), 2).candidates().stream()
                .map(candidate -> candidate.pin().describe())
                .toList();
        boolean pulled = Lesson.solve(Lesson.task()).steps().get(2).direction() == BellowsDirection.PULL;
        assertTrue(words.contains(pulled ? "push, button 1.5" : "pull, button 2.3"), words.toString());
        assertEquals(
                pulled ? 2 : 3,
                words.stream().filter(each -> each.contains("finger")).count(),
                words.toString());
        assertTrue(words.contains("left hand silent"), words.toString());
        assertTrue(words.contains("air full"), words.toString());
    }

    @Test
    void whatIsPlayedIsNoCandidate() {
        Explanation explanation = explain(Lesson.task(), 2);
        Step step = explanation.step();
        for (Explanation.Candidate candidate : explanation.candidates()) {
            Step forced = Lesson.solve(Lesson.task(candidate.pin())).steps().get(2);
            boolean same = forced.direction() == step.direction()
                    && forced.buttons().equals(step.buttons())
                    && forced.fingers().equals(step.fingers())
                    && forced.leftHand().equals(step.leftHand())
                    && forced.air() == step.air();
            assertFalse(same, candidate.pin().describe());
        }
    }

    @Test
    void nothingIsCheaperThanProvedMarksAndTheCheapestStandsFirst() {
        int before = 0;
        for (Explanation.Candidate candidate : explain(Lesson.task(), 4).candidates()) {
            assertTrue(candidate.comparison().points() >= before, candidate.toString());
            before = candidate.comparison().points();
        }
    }

    @Test
    void whatAPinForbidsIsSaidToBePinned() {
        BellowsDirection way = Lesson.solve(Lesson.task()).steps().get(2).direction();
        Task task = Lesson.task(Pin.at(2).direction(way));
        List<Explanation.Candidate> pinned = explain(task, 2).candidates().stream()
                .filter(candidate -> candidate.pin().direction() == way.opposite())
                .toList();
        assertEquals(1, pinned.size());
        assertEquals(Explanation.Obstacle.PIN, pinned.get(0).obstacle());
    }
}
