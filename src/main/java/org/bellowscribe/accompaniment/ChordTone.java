package org.bellowscribe.accompaniment;

import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.PitchClass;

/** Which note of the harmony a bass is to sound. */
public enum ChordTone {
    /** The root, or the bass that the chord symbol names. */
    ROOT,
    /** The third, for runs. */
    THIRD,
    /** The fifth, for a bass that alternates. */
    FIFTH;

    /** Returns the note of a harmony. */
    public PitchClass of(ChordSymbol harmony) {
        return switch (this) {
            case ROOT -> harmony.bass();
            case THIRD -> harmony.root().plus(harmony.isMinor() ? 3 : 4);
            case FIFTH -> harmony.root().plus(7);
        };
    }
}
