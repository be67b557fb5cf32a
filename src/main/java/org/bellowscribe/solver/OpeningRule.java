package org.bellowscribe.solver;

/** A rule about how far the bellows are open at the end of an event. */
public non-sealed interface OpeningRule extends Rule {

    /** Smallest opening that is comfortable, in percent of the capacity (common practice, no source). */
    int COMFORTABLE_FROM = 20;

    /** Largest opening that is comfortable, in percent of the capacity (common practice, no source). */
    int COMFORTABLE_TO = 80;

    /**
     * Returns the points, 0 or more.
     *
     * @param moment the event, which may be a rest
     * @param percent how far the bellows are open at its end, in whole percent of the capacity, 0 (closed) to 100
     * @param points the points of the rule's cases
     */
    int points(Moment moment, int percent, Points points);
}
