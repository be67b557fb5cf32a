package org.bellowscribe.musicxml.read;

import java.util.HashMap;
import java.util.Map;
import org.audiveris.proxymusic.ClefSign;

/**
 * What is printed around the notes of a part, staff by staff.
 *
 * @param clefs for each staff with a clef the sign of its first
 * @param lyrics for each staff with lyrics how many notes have any
 */
record Staves(Map<Integer, ClefSign> clefs, Map<Integer, Integer> lyrics) {

    /** Creates an empty one, to be filled while the part is read. */
    Staves() {
        this(new HashMap<>(), new HashMap<>());
    }

    /** Tells that a staff has a clef. */
    void clef(int staff, ClefSign sign) {
        clefs.putIfAbsent(staff, sign);
    }

    /** Tells that a note of a staff has lyrics. */
    void lyric(int staff) {
        lyrics.merge(staff, 1, Integer::sum);
    }

    /** Returns true if the first clef of a staff is an F clef. */
    boolean isBass(int staff) {
        return clefs.get(staff) == ClefSign.F;
    }

    /** Returns true if the first clef of a staff is a C clef, as of violas and old tenors. */
    boolean isMiddle(int staff) {
        return clefs.get(staff) == ClefSign.C;
    }
}
