package org.bellowscribe.accompaniment;

import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/** How a left-hand sound stands to what the harmony wants. */
public enum LeftHandFit {
    /** Exactly what is wanted, on whatever button. */
    EXACT,
    /** The root in another form: a chord for a bass, a bass for a chord, or the root where the symbol names a bass. */
    OTHER_KIND,
    /** The bass a fifth above the root. */
    FIFTH,
    /** The major chord on the third of a minor chord: it shares two notes with it. */
    RELATIVE,
    /** Nothing sounds. */
    SILENT;

    /**
     * Returns how a sound fits, or null if it cannot stand in.
     *
     * @param wanted bass or chord
     * @param harmony the harmony
     * @param sound what would sound
     */
    public static @Nullable LeftHandFit of(LeftHandKind wanted, ChordSymbol harmony, LeftHandSound sound) {
        PitchClass root = wanted == LeftHandKind.BASS ? harmony.bass() : harmony.root();
        boolean thirdFits = sound.third() == Third.NONE || (sound.third() == Third.MINOR) == harmony.isMinor();
        if (sound.root().equals(root) && thirdFits) {
            return sound.kind() == wanted ? EXACT : OTHER_KIND;
        }
        if (sound.kind() == LeftHandKind.BASS
                && sound.root().equals(harmony.root().plus(7))) {
            return FIFTH;
        }
        boolean relative = harmony.isMinor()
                && sound.third() == Third.MAJOR
                && sound.root().equals(harmony.root().plus(3));
        return relative && wanted == LeftHandKind.CHORD ? RELATIVE : null;
    }
}
