package org.bellowscribe.accompaniment;

import java.util.Locale;
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
    /** The root where the pattern would have the third or the fifth in the bass: always right. */
    PLAIN_ROOT,
    /** The root in another form: a chord for a bass, a bass for a chord, or the root where the symbol names a bass. */
    OTHER_KIND,
    /** The bass a fifth above the root. */
    FIFTH,
    /**
     * For a minor chord the major chord on its third, or that chord's bass: two notes are the same (a C chord over an A bass
     * is Am7).
     */
    RELATIVE,
    /** For a major chord the minor chord below it, or that chord's bass: E minor for G; never where the left hand is written out. */
    RELATIVE_MINOR,
    /** A sound of another harmony that has the melody note over it: it goes with the tune, if not with the harmony. */
    WITH_MELODY,
    /** Nothing sounds. */
    SILENT;

    private static final int MINOR_THIRD = 3;
    private static final int FIFTH_ABOVE = 7;

    /** Returns the name in small letters, joined by hyphens, such as {@code other-kind}. */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Returns how a sound fits, or null if it cannot stand in.
     *
     * @param wanted what the pattern wants
     * @param harmony the harmony
     * @param sound what would sound
     */
    public static @Nullable LeftHandFit of(WantedSound wanted, ChordSymbol harmony, LeftHandSound sound) {
        boolean bass = wanted.kind() == LeftHandKind.BASS;
        PitchClass note = bass ? wanted.tone().of(harmony) : harmony.root();
        boolean sameKind = sound.kind() == wanted.kind();
        if (sound.root().equals(note) && sameKind && thirdFits(harmony, sound)) {
            return EXACT;
        }
        if (sound.root().equals(harmony.bass()) && sameKind && bass) {
            return PLAIN_ROOT;
        }
        if (sound.root().equals(bass ? harmony.bass() : harmony.root()) && thirdFits(harmony, sound)) {
            return OTHER_KIND;
        }
        if (sound.kind() == LeftHandKind.BASS
                && sound.root().equals(harmony.root().plus(FIFTH_ABOVE))) {
            return FIFTH;
        }
        if (sameKind && isRelative(harmony, sound)) {
            return harmony.isMinor() ? RELATIVE : wanted.melody().isEmpty() ? null : RELATIVE_MINOR;
        }
        return sameKind && wanted.melody().stream().anyMatch(sound::carries) ? WITH_MELODY : null;
    }

    private static boolean thirdFits(ChordSymbol harmony, LeftHandSound sound) {
        return sound.third() == Third.NONE || (sound.third() == Third.MINOR) == harmony.isMinor();
    }

    private static boolean isRelative(ChordSymbol harmony, LeftHandSound sound) {
        return harmony.isMinor()
                ? sound.third() != Third.MINOR
                        && sound.root().equals(harmony.root().plus(MINOR_THIRD))
                : sound.third() != Third.MAJOR
                        && sound.root().equals(harmony.root().plus(-MINOR_THIRD));
    }
}
