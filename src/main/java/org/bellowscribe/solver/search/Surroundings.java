package org.bellowscribe.solver.search;

/** Lower bounds without openings of what lies around an event that takes an option in a context. */
interface Surroundings {

    /** Returns the bound of everything but an event and what follows it, to which the price of air is added. */
    double outside(int e, int x, int c);

    /** Returns the bound of everything if an event takes an option. */
    double through(int e, int x, int c);

    /** Returns the bound from an event on. */
    double ahead(int e, int x, int c);

    /**
     * Returns how much may be spent from an event's child on, pair cost included, if the event takes an option: the limit
     * less the bound of all else.
     */
    double spare(int e, int f, int x, int c, int limit);
}
