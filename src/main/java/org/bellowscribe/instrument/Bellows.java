package org.bellowscribe.instrument;

/**
 * The bellows and the air button. Air is counted in RU.s: 1 RU is the air that one A4 reed takes in a second at
 * mezzo-forte.
 *
 * @param capacity air from closed to fully open, in RU.s, more than 0
 * @param reserve share of the capacity that stays unused at either end, 0 or more, under 0.5
 * @param lightAirFlow flow through a lightly pressed air button, in RU
 * @param fullAirFlow flow through a fully pressed air button, in RU, at least the light flow
 */
public record Bellows(double capacity, double reserve, double lightAirFlow, double fullAirFlow) {

    /** Checks the ranges. */
    public Bellows {
        if (!(capacity > 0)
                || !(reserve >= 0 && reserve < 0.5)
                || !(lightAirFlow >= 0 && fullAirFlow >= lightAirFlow)) {
            throw new IllegalArgumentException(
                    ("The capacity (%s) must be more than 0, the reserve (%s) from 0 to under 0.5, and the light air flow"
                                    + " (%s) from 0 to the full air flow (%s).")
                            .formatted(capacity, reserve, lightAirFlow, fullAirFlow));
        }
    }

    /** Returns the smallest opening to use, in RU.s. */
    public double lowest() {
        return capacity * reserve;
    }

    /** Returns the largest opening to use, in RU.s. */
    public double highest() {
        return capacity * (1 - reserve);
    }
}
