package org.bellowscribe.score;

import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Key;

/**
 * A written measure.
 *
 * @param index 0-based place in the part
 * @param number printed number, as in the file; may be empty
 * @param length sounding length of what is written in it; 0 for a measure that holds nothing but a bar line
 * @param beatOffset where in the bar its first moment falls: 0 for a full measure, the missing time for a pick-up and
 *     for the second half of a bar that is cut by a repeat
 * @param time time signature in force
 * @param key key in force
 */
public record Measure(int index, String number, Fraction length, Fraction beatOffset, TimeSignature time, Key key) {

    /** Returns true if a beat falls on a moment: a pulse, and every quarter of times in halves such as 2/2. */
    public boolean isOnBeat(Fraction onset) {
        Fraction beat = time.isCompound() ? time.pulse() : Fraction.min(time.pulse(), Fraction.QUARTER);
        return onset.plus(beatOffset).dividedBy(beat).denominator() == 1;
    }
}
