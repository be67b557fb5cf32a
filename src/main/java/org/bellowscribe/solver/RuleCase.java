package org.bellowscribe.solver;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A case of a rule: what a manner of playing gives points to.
 *
 * @param rule the rule's id
 * @param name the case's name
 */
public record RuleCase(String rule, String name) implements Comparable<RuleCase> {

    private static final Comparator<RuleCase> ORDER =
            Comparator.comparing(RuleCase::rule).thenComparing(RuleCase::name);

    /** Returns the cases of all rules, rules by id, the cases of each in its own order. */
    public static List<RuleCase> all() {
        List<RuleCase> all = new ArrayList<>();
        for (Rule rule : Rule.all()) {
            rule.cases().forEach(name -> all.add(new RuleCase(rule.id(), name)));
        }
        return List.copyOf(all);
    }

    @Override
    public int compareTo(RuleCase other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return rule + " " + name;
    }
}
