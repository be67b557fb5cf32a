package org.bellowscribe.solver.search;

import java.util.List;

/**
 * A choice at an event, as the search sees it.
 *
 * @param sign 1 if air entering opens the bellows further (pull), -1 if it leaves them (push)
 * @param cost points, 0 or more
 * @param moves ways to spend air, at least one
 */
public record Option(int sign, int cost, List<Move> moves) {

    /** Copies the moves. */
    public Option {
        moves = List.copyOf(moves);
    }
}
