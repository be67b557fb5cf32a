package org.bellowscribe.solver.search;

/**
 * A way to spend air during an event: a left hand and a use of the air button.
 *
 * @param cost points, 0 or more
 * @param low least amount of air that must pass, 0 or more
 * @param high largest amount of air that may pass, at least {@code low}
 */
public record Move(int cost, int low, int high) {}
