package org.bellowscribe.solver;

import java.util.List;
import java.util.Map;

/**
 * A manner of playing: the points of every rule.
 *
 * @param id id in kebab-case
 * @param summary one sentence for people
 * @param remarks what else a player should know, one sentence each: sources, cautions
 * @param byRule points by rule id
 */
public record Manner(String id, String summary, List<String> remarks, Map<String, Points> byRule) {

    /** Copies the list and the map. */
    public Manner {
        remarks = List.copyOf(remarks);
        byRule = Map.copyOf(byRule);
    }

    /** Returns the points of a rule; none if the manner does not mention it. */
    public Points points(Rule rule) {
        return byRule.getOrDefault(rule.id(), Points.NONE);
    }
}
