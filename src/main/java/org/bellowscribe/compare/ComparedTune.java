package org.bellowscribe.compare;

import org.bellowscribe.decision.DecidedTune;

/**
 * A tune that is played in two ways.
 *
 * @param file what its file is called
 * @param a one way
 * @param b the other; of the same tune in the same key
 */
public record ComparedTune(String file, Side a, Side b) {

    /**
     * One way to play it.
     *
     * @param name what people call the way
     * @param tune the tune played so
     * @param score where the marked score is, as a page beside it links to it
     * @param picture where the picture of the bellows is
     */
    public record Side(String name, DecidedTune tune, String score, String picture) {}

    /** Returns the title of the tune. */
    public String title() {
        return a.tune().tune().title();
    }
}
