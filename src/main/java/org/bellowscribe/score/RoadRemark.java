package org.bellowscribe.score;

/**
 * A remark about the order of play: what was ambiguous and which rule decided it.
 *
 * @param measure 0-based index of the measure that holds the sign
 * @param text one sentence or two, ending in a full stop; measures are named by their 1-based index
 */
public record RoadRemark(int measure, String text) {}
