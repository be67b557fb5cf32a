package org.bellowscribe.replay;

import org.bellowscribe.diagnostic.Place;

/**
 * A limit that a solution breaks.
 *
 * @param place the measure; the whole file if it is about no single measure
 * @param limit id of the limit in kebab-case, such as {@code hand-reach}
 * @param text one sentence with the values, ending in a full stop
 */
public record Violation(Place place, String limit, String text) {

    /** Returns {@code measure 3, part P1: [hand-reach] Sentence.} */
    @Override
    public String toString() {
        String where = place.describe();
        return (where.isEmpty() ? "" : where + ": ") + "[" + limit + "] " + text;
    }
}
