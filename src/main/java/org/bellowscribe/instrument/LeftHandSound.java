package org.bellowscribe.instrument;

import java.util.List;
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

    private static final int MINOR_THIRD = 3;
    private static final int MAJOR_THIRD = 4;
    private static final int FIFTH = 7;

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

    /** Returns what it sounds: one note for a bass, two or three for a chord. */
    public List<PitchClass> tones() {
        if (kind == LeftHandKind.BASS) {
            return List.of(root);
        }
        return switch (third) {
            case MAJOR -> List.of(root, root.plus(MAJOR_THIRD), root.plus(FIFTH));
            case MINOR -> List.of(root, root.plus(MINOR_THIRD), root.plus(FIFTH));
            case NONE -> List.of(root, root.plus(FIFTH));
        };
    }

    /** Returns true if a note is part of it; over a bass also the notes of its triads. */
    public boolean carries(PitchClass note) {
        int above = note.above(root);
        boolean overBass = above == MINOR_THIRD || above == MAJOR_THIRD || above == FIFTH;
        return tones().contains(note) || (kind == LeftHandKind.BASS && overBass);
    }

    @Override
    public int compareTo(LeftHandSound other) {
        int byKind = kind.compareTo(other.kind);
        int byRoot = root.compareTo(other.root);
        return byKind != 0 ? byKind : byRoot != 0 ? byRoot : third.compareTo(other.third);
    }
}
