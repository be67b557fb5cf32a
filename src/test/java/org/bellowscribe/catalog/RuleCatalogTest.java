package org.bellowscribe.catalog;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.ServiceLoader;
import java.util.Set;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Rule;
import org.bellowscribe.solver.StepLimit;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule and limit on the class path is named, described, priced and tested. */
class RuleCatalogTest {

    static List<Rule> rules() {
        return Rule.all();
    }

    static List<StepLimit> limits() {
        return ServiceLoader.load(StepLimit.class).stream()
                .map(ServiceLoader.Provider::get)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void ruleIsDescribedAndTested(Rule rule) {
        check(rule, rule.id(), rule.summary());
    }

    @ParameterizedTest
    @MethodSource("limits")
    void limitIsDescribedAndTested(StepLimit limit) {
        check(limit, limit.id(), limit.summary());
    }

    private static void check(Object plugIn, String id, String summary) {
        assertTrue(id.matches("[a-z]+(-[a-z]+)*"), id);
        assertTrue(summary.matches("[A-Z].*[^.]\\."), summary);
        assertDoesNotThrow(() -> Class.forName(plugIn.getClass().getName() + "Test"));
    }

    @Test
    void idsAreUnique() {
        Set<String> ids = new HashSet<>();
        rules().forEach(rule -> ids.add(rule.id()));
        limits().forEach(limit -> ids.add(limit.id()));
        assertEquals(rules().size() + limits().size(), ids.size());
    }

    @ParameterizedTest
    @MethodSource("rules")
    void usualMannerGivesPointsToEveryCase(Rule rule) {
        Manner manner = MannerLibrary.of(MannerLibrary.DEFAULT_ID);
        assertEquals(Set.copyOf(rule.cases()), manner.points(rule).byCase().keySet());
    }
}
