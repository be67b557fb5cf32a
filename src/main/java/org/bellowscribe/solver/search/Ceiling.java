package org.bellowscribe.solver.search;

/**
 * What a pass knows beforehand of the rest of the tune: lower bounds by which it leaves out whatever cannot be part of an
 * answer within its limit. States are events with a context and an option; openings are counted from the last anchor.
 * A function that is returned may be overwritten by the next call.
 */
interface Ceiling {

    /** Returns false if an event may take no option in a context; it need not be known. */
    default boolean allowsAny(int e, int x) {
        return true;
    }

    /** Returns true if an event may take an option within the limit. */
    boolean allows(int e, int x, int c, int limit);

    /** Returns the cost of what follows an event where it keeps the limit. */
    StepFunction clipEnding(int e, int x, int c, StepFunction ending, int limit);

    /** Returns the cost of an event and what follows where it keeps the limit. */
    StepFunction clipBeginning(int e, int x, int c, StepFunction beginning, int limit);

    /** Returns this for a pass that takes openings as they are, with the only anchor between two of them. */
    Ceiling asTheyAre(int low, int high);

    /** Returns the most that may be spent from an event on if it takes an option, whatever the opening. */
    double room(int e, int x, int c, int limit);

    /** Returns how much may be spent from an event's child on, pair cost included, if the event takes an option. */
    double spare(int e, int f, int x, int c, int limit);

    /** Returns the least that is spent from an event on if it takes an option. */
    double ahead(int e, int x, int c);
}
