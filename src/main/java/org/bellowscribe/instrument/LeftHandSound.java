package org.bellowscribe.instrument;

import java.util.Locale;
import org.bellowscribe.theory.PitchClass;

/**
 * What a left-hand button sounds in one direction.
 *
 * @param kind bass or chord
 * @param root the bass note, or the root of the chord
 * @param third the third of the chord; {@code NONE} for a bass
 */
public record LeftHandSound(LeftHandKind kind, PitchClass root, Third third) implements Comparable<LeftHandSound> {

    /** Checks that a bass has no third. */
    public LeftHandSound {
        if (kind == LeftHandKind.BASS && third != Third.NONE) {
            throw new IllegalArgumentException("The third (%s) of a bass must be NONE.".formatted(third));
        }
    }

    /** Returns a single bass note. */
    public static LeftHandSound bass(PitchClass root) {
        return new LeftHandSound(LeftHandKind.BASS, root, Third.NONE);
    }

    /** Returns a chord. */
    public static LeftHandSound chord(PitchClass root, Third third) {
        return new LeftHandSound(LeftHandKind.CHORD, root, third);
    }

    /**
     * Returns the name as the trade writes it: a capital letter for a bass, a small one for a chord, {@code m} added for
     * a minor chord, such as {@code G}, {@code g}, {@code em}, {@code f#}.
     */
    public String label() {
        String letter = root.toString();
        if (kind == LeftHandKind.BASS) {
            return letter;
        }
        return letter.toLowerCase(Locale.ROOT) + (third == Third.MINOR ? "m" : "");
    }

    @Override
    public int compareTo(LeftHandSound other) {
        int byKind = kind.compareTo(other.kind);
        int byRoot = root.compareTo(other.root);
        return byKind != 0 ? byKind : byRoot != 0 ? byRoot : third.compareTo(other.third);
    }
}
