package org.bellowscribe.solver.search;

/** Lower bounds without openings of what lies around event {@code e} that takes option {@code c} in context {@code x}. */
interface Surroundings {

    /** More than any cost, as a bound that is no integer. */
    double NEVER = 1e12;

    /** Room for the rounding of bounds that are no integers. */
    double SLACK = 1e-3;

    /** Returns the least integer that is not under a bound, give or take the rounding. */
    static int roundedUp(double bound) {
        return (int) Math.min(Problem.NEVER, Math.ceil(bound - SLACK));
    }

    /** Returns the bound of everything but an event and what follows it, to which the price of air is added. */
    double outside(int e, int x, int c);

    /** Returns the bound of everything if an event takes an option. */
    double through(int e, int x, int c);

    /** Returns the bound from an event on. */
    double ahead(int e, int x, int c);

    /**
     * Returns how much may be spent from an event's child {@code f} on, pair cost included, if the event takes an option:
     * the limit less the bound of all else.
     */
    double spare(int e, int f, int x, int c, int limit);
}
