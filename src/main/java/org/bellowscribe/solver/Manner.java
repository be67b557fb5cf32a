package org.bellowscribe.solver;

import java.util.List;
import java.util.Map;
import org.bellowscribe.accompaniment.PatternChoice;

/**
 * A manner of playing: the points of every rule.
 *
 * @param id id in kebab-case
 * @param summary one sentence for people
 * @param remarks what else a player should know, one sentence each: sources, cautions
 * @param byRule points by rule id
 * @param patterns what the left hand plays if nobody names a pattern; where none of these holds, as time and tempo suit
 */
public record Manner(
        String id,
        String summary,
        List<String> remarks,
        Map<String, Points> byRule,
        List<PatternChoice.Named> patterns) {

    /** Copies the lists and the map. */
    public Manner {
        remarks = List.copyOf(remarks);
        patterns = List.copyOf(patterns);
        byRule = Map.copyOf(byRule);
    }

    /** Returns the points of a rule; none if the manner does not mention it. */
    public Points points(Rule rule) {
        return byRule.getOrDefault(rule.id(), Points.NONE);
    }
}
