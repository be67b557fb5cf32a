package org.bellowscribe.solver.model;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.instrument.HomeKeys;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.theory.Key;

/**
 * Which row of an instrument is the home of a key: the row whose own key has the same signature, else one that lies a
 * single fifth away, so that six of the seven notes of the scale are on it. The signature decides, not the mode: relative
 * minor and modes lie where their notes are (common practice, no source; A minor and A dorian on the G row of a D/G box, B
 * minor on the D row). Of two rows a fifth away on either side, and further off, none is home: a tune in D on B/C is played
 * over both rows. Of three rows a fourth apart the middle key has its own. A single row is home or not, which changes
 * nothing. Rows of accidentals have no key. On a concertina a row goes through both hands.
 */
public final class RowOfKey {

    private static final int OCTAVE = 12;

    // A fifth is its own inverse: 7 times 7 is 1 in steps of an octave.
    private static final int FIFTH = 7;

    private final SortedMap<Integer, Integer> fifths = new TreeMap<>();

    /** Looks at the rows of an instrument. */
    public RowOfKey(Instrument instrument) {
        HomeKeys.of(instrument).forEach((row, tonic) -> fifths.put(row, FIFTH * tonic.semitone()));
    }

    /** Returns the row that is home in a key, from 1, or {@link Moment#NO_ROW}. */
    public int of(Key key) {
        for (int away = 0; away <= 1; away++) {
            int row = only(key, away);
            if (row != Moment.NO_ROW) {
                return row;
            }
        }
        return Moment.NO_ROW;
    }

    // Of several rows in one key the outer one is home.
    private int only(Key key, int away) {
        int found = Moment.NO_ROW;
        for (Map.Entry<Integer, Integer> row : fifths.entrySet()) {
            int distance = Math.floorMod(row.getValue() - key.fifths(), OCTAVE);
            if (Math.min(distance, OCTAVE - distance) == away) {
                if (found == Moment.NO_ROW) {
                    found = row.getKey();
                } else if (away > 0) {
                    return Moment.NO_ROW;
                }
            }
        }
        return found;
    }
}
