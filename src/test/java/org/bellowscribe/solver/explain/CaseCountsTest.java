package org.bellowscribe.solver.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CaseCountsTest {

    static java.util.List<String> manners() {
        return MannerLibrary.ids();
    }

    @ParameterizedTest
    @MethodSource("manners")
    void theCostIsTheSumOfTheCountsTimesThePoints(String id) {
        Manner manner = MannerLibrary.of(id);
        Task lesson = Lesson.task();
        Task task = lesson.with(lesson.options().with(manner));
        Solution solution = ((Outcome.Solved) Solver.solve(task)).solution();
        double sum = 0;
        for (Map.Entry<RuleCase, Double> each : CaseCounts.of(task, solution).entrySet()) {
            RuleCase at = each.getKey();
            sum += each.getValue()
                    * manner.byRule().getOrDefault(at.rule(), Points.NONE).of(at.name());
        }
        assertEquals(solution.cost().total(), sum, 1e-9);
    }
}
