package org.bellowscribe.solver;

import java.util.Map;

/**
 * A manner of playing: the points of every rule.
 *
 * @param id id in kebab-case
 * @param summary one sentence for people
 * @param byRule points by rule id
 */
public record Manner(String id, String summary, Map<String, Points> byRule) {

    /** Copies the map. */
    public Manner {
        byRule = Map.copyOf(byRule);
    }

    /** Returns the points of a rule; none if the manner does not mention it. */
    public Points points(Rule rule) {
        return byRule.getOrDefault(rule.id(), Points.NONE);
    }
}
