package org.bellowscribe.solver;

import java.util.Map;

/**
 * The points of one rule in a manner of playing.
 *
 * @param byCase points by the rule's case names
 */
public record Points(Map<String, Integer> byCase) {

    /** A rule that the manner does not mention: it costs nothing. */
    public static final Points NONE = new Points(Map.of());

    /** Copies the map. */
    public Points {
        byCase = Map.copyOf(byCase);
    }

    /** Returns the points of a case; 0 if the manner does not mention it. */
    public int of(String name) {
        return byCase.getOrDefault(name, 0);
    }

    /** Returns the points of a case named after a pace. */
    public int of(Pace pace) {
        return of(pace.label());
    }
}
