package org.bellowscribe.solver.explain;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.Task;

/**
 * What a pin costs: how much more the tune costs with it than with all other pins alone. Two pins that ask for the same
 * may each cost nothing.
 *
 * @param pin the pin
 * @param comparison the marks with it against those without it
 * @param lastsOnce true if for this pin's sake the marks are for one time through only
 */
public record PinPrice(Pin pin, Comparison comparison, boolean lastsOnce) {

    /**
     * Returns the price of each pin, in the order of the pins. As many solves as there are pins, but only one if all of
     * them together cost nothing.
     *
     * @param task the task with its pins
     * @param solution its solution
     */
    public static List<PinPrice> of(Task task, Solution solution) {
        Pins pins = task.options().pins();
        boolean free = pins.list().size() > 1 && isCheapest(solution, otherwise(task.with(Pins.NONE), solution));
        List<PinPrice> prices = new ArrayList<>();
        for (Pin pin : pins.list()) {
            Solution without = free ? solution : otherwise(task.with(pins.without(pin)), solution);
            boolean lastsOnce = without.again() && !solution.again();
            prices.add(new PinPrice(pin, Comparison.of(solution.cost(), without.cost()), lastsOnce));
        }
        return prices;
    }

    private static boolean isCheapest(Solution solution, Solution without) {
        return solution.again() == without.again()
                && solution.cost().total() == without.cost().total();
    }

    // What is fixed can be played without being fixed too: a dearer answer only means that the search gave up.
    private static Solution otherwise(Task fewer, Solution solution) {
        Solution without = Solver.attempt(fewer);
        if (without == null) {
            return solution;
        }
        boolean dearer = without.again() == solution.again()
                && without.cost().total() > solution.cost().total();
        return dearer ? solution : without;
    }
}
