package org.bellowscribe.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class StepFunctionTest {

    private static StepFunction steps() {
        StepFunction function = StepFunction.constant(0, 9, 5);
        function.append(10, 19, 2);
        function.append(30, 39, 7);
        return function;
    }

    @Test
    void aMoveKeepsTheLowerOfTwoStepsThatMeet() {
        StepFunction moved = new StepFunction(1);
        moved.setMoved(steps(), -3, 4, 1);
        assertEquals(6, moved.at(6));
        assertEquals(3, moved.at(7));
        assertEquals(3, moved.at(23));
        assertEquals(Problem.NEVER, moved.at(24));
        assertEquals(8, moved.at(27));
    }

    @Test
    void onlyWhatKeepsTheLimitTogetherWithAnotherFunctionIsLeft() {
        StepFunction other = StepFunction.constant(5, 14, 3);
        other.append(15, 35, 6);
        StepFunction kept = new StepFunction(1);
        kept.setWithin(steps(), other, 8);
        assertEquals(5, kept.at(5));
        assertEquals(2, kept.at(19));
        assertEquals(Problem.NEVER, kept.at(4));
        assertEquals(Problem.NEVER, kept.at(30));
    }

    @Test
    void theLowestOfSomeFunctionsIsLowerThanEach() {
        Lowest lowest = new Lowest();
        lowest.add(steps(), 0);
        lowest.add(StepFunction.constant(5, 34, 1), 3);
        StepFunction least = lowest.copy();
        assertEquals(5, least.at(4));
        assertEquals(4, least.at(5));
        assertEquals(2, least.at(10));
        assertEquals(4, least.at(20));
        assertEquals(7, least.at(39));
        assertEquals(2, least.least());
    }

    @Test
    void bellowsCutStepsAtTheirEnds() {
        StepFunction function = steps();
        function.keep(5, 12);
        assertEquals(Problem.NEVER, function.at(4));
        assertEquals(5, function.at(5));
        assertEquals(2, function.at(12));
        assertEquals(Problem.NEVER, function.at(13));
        function.keep(40, 50);
        assertTrue(function.isEmpty());
        assertEquals(Problem.NEVER, function.least());
    }
}
