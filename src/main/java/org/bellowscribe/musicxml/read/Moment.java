package org.bellowscribe.musicxml.read;

/**
 * Where a direction stands.
 *
 * @param measure 0-based index of its measure
 * @param start index of the measure that starts at or after it: the same, or the next one if it stands behind the last
 *     note
 * @param first true if it stands before the first note
 * @param onsetsAfter number of moments at or after it in its measure where notes begin; 0 if it stands before the first
 */
record Moment(int measure, int start, boolean first, int onsetsAfter) {

    /**
     * Tells whether the sign at this place stands inside its measure. Printed words before the last note may mean the bar
     * line behind it, for there they have most room; a sound stands where it holds.
     */
    boolean cuts(boolean sounds) {
        return onsetsAfter > (sounds ? 0 : 1);
    }
}
