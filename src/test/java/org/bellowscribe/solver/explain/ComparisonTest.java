package org.bellowscribe.solver.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Map;
import java.util.TreeMap;
import org.bellowscribe.solver.Cost;
import org.bellowscribe.solver.Costs;
import org.junit.jupiter.api.Test;

class ComparisonTest {

    private static Cost cost(int lowerBound, Map<String, Integer> points, Map<String, Integer> times) {
        int total = points.values().stream().mapToInt(Integer::intValue).sum();
        return Costs.of(total, lowerBound, new TreeMap<>(points), new TreeMap<>(times));
    }

    private static final Cost CHEAP =
            cost(14, Map.of("bellows-reversal", 6, "hand-shift", 8), Map.of("bellows-reversal", 2, "hand-shift", 1));
    private static final Cost DEAR =
            cost(19, Map.of("bellows-reversal", 12, "row-change", 7), Map.of("bellows-reversal", 4, "row-change", 1));

    @Test
    void differencesOfTheRulesAddUpToTheWhole() {
        Comparison comparison = Comparison.of(DEAR, CHEAP);
        assertEquals(5, comparison.points());
        assertEquals(
                5,
                comparison.byRule().values().stream()
                        .mapToInt(Comparison.Difference::points)
                        .sum());
    }

    @Test
    void rulesAreToldInWordsTheDearestFirst() {
        assertEquals(
                "row change +7 (1 more), bellows reversal +6 (2 more), hand shift -8 (1 fewer)",
                Comparison.of(DEAR, CHEAP).describe());
    }

    @Test
    void differenceFromACostThatIsNotProvedIsNotExact() {
        assertFalse(
                Comparison.of(DEAR, cost(3, Map.of("hand-shift", 8), Map.of())).proved());
    }
}
