package org.bellowscribe.learning;

/**
 * Other marks than those somebody made, found cheapest under some points.
 *
 * @param place where they were free
 * @param margin by so many points what was marked should be cheaper: one for each measure in which the marks differ
 * @param counts how often they meet each case, in the order of the table
 */
record Rival(Place place, int margin, double[] counts) {}
