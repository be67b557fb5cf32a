package org.bellowscribe.annotation.mark;

import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.PitchClass;

/**
 * What the left hand sounds, for those who play along. Only a bass and a chord that begin together are one symbol with a
 * bass under it. A bass alone stands for the harmony that is meant there, and a chord that follows it within that harmony
 * changes nothing (alternating and stand-in basses: common practice, no source).
 *
 * @param root root of the chord
 * @param third its third; {@code NONE} where none sounds
 * @param bass the bass; the root, unless another bass is under it
 */
record SoundingChord(PitchClass root, Third third, PitchClass bass) {

    /** Returns true if this is the same chord, whatever bass is under it. */
    boolean isOn(PitchClass otherRoot, Third otherThird) {
        return root.equals(otherRoot) && third == otherThird;
    }
}
