package org.bellowscribe.solver;

import java.util.List;

/**
 * Keeps a solution away from others: each choice of direction and buttons that one of them made costs points more.
 *
 * @param others the solutions to keep away from, of the same tune
 * @param points points for each event and each of the others that agrees there, 0 or more
 */
public record Apart(List<Solution> others, int points) {

    /** Nothing to keep away from. */
    public static final Apart FREE = new Apart(List.of(), 0);

    /** Copies the list. */
    public Apart {
        others = List.copyOf(others);
    }

    /** Returns the points of a choice at an event, 0 or more. */
    public int points(int event, Choice choice) {
        int sum = 0;
        for (Solution other : others) {
            Step step = other.steps().get(event);
            boolean same =
                    step.direction() == choice.direction() && step.buttons().equals(choice.buttons());
            sum += same && !step.event().isRest() ? points : 0;
        }
        return sum;
    }
}
