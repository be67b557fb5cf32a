package org.bellowscribe.musicxml.read;

/**
 * Where a direction stands.
 *
 * @param measure 0-based index of its measure
 * @param start index of the measure that starts at or after it: the same, or the next one if it stands behind the last
 *     note
 * @param first true if it stands before the first note
 * @param cuts true if it stands between notes, with more than one note after it (a sign may stand before the last note
 *     and mean the bar line behind it)
 */
record Moment(int measure, int start, boolean first, boolean cuts) {}
