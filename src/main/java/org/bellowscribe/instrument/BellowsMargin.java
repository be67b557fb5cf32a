package org.bellowscribe.instrument;

/**
 * Leaves a margin for bellows that leak or are very small: every reed and every left-hand sound takes so many percent
 * more air, and so many percent of the stroke, half at either end, stay unused on top of the reserve.
 *
 * <p>More air for all sounds is the same as less capacity and a smaller air button in the unit that remains; so only the
 * bellows change, and an opening is the same share of them as before.
 */
public final class BellowsMargin {

    /** The widest margin, in percent. */
    public static final int MOST = 50;

    private BellowsMargin() {}

    /**
     * Returns an instrument with a margin.
     *
     * @param percent from 0, for none, to {@link #MOST}
     */
    public static Instrument on(Instrument instrument, int percent) {
        if (percent < 0 || percent > MOST) {
            throw new IllegalArgumentException("The margin (%d) must be from 0 to %d.".formatted(percent, MOST));
        }
        if (percent == 0) {
            return instrument;
        }
        Bellows bellows = instrument.bellows();
        double more = 1 + percent / 100.0;
        // A reserve of half the stroke at either end would leave nothing to play with.
        double reserve = Math.min(0.49, bellows.reserve() + percent / 200.0);
        return new Instrument(
                instrument.id(),
                instrument.name(),
                instrument.buttons(),
                instrument.leftHand(),
                new Bellows(
                        bellows.capacity() / more,
                        reserve,
                        bellows.lightAirFlow() / more,
                        bellows.fullAirFlow() / more),
                instrument.air());
    }
}
