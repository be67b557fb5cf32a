package org.bellowscribe.learning;

/**
 * Marks that do not come out under the points found.
 *
 * @param place the tune and the measure
 * @param points by how many points other marks are cheaper there; 0 if they cost the same
 * @param why why no points at all can make the marks cheapest; empty if some could, but then other marks would not come out
 */
public record Unmet(String place, int points, String why) {}
