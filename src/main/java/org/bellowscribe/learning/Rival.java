package org.bellowscribe.learning;

import org.bellowscribe.solver.Solution;

/**
 * Other marks than those somebody made, found cheapest under some points.
 *
 * @param place where they were free
 * @param solution the marks
 * @param counts how often they meet each case, in the order of the table
 */
record Rival(Place place, Solution solution, double[] counts) {}
