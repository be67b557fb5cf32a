package org.bellowscribe.theory;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;

/**
 * A chord symbol, read as the set of pitch classes it asks for.
 *
 * @param root the root
 * @param tones every pitch class of the chord, the root among them; in ascending order of semitone
 * @param bass the lowest note asked for; the root unless the symbol names another
 */
public record ChordSymbol(PitchClass root, Set<PitchClass> tones, PitchClass bass) {

    /** Copies and sorts the tones and checks that the root is one of them. */
    public ChordSymbol {
        if (!tones.contains(root)) {
            throw new IllegalArgumentException("The root (%s) must be one of the tones (%s).".formatted(root, tones));
        }
        tones = Collections.unmodifiableSet(new TreeSet<>(tones));
    }

    /** Returns the major triad on a root. */
    public static ChordSymbol major(PitchClass root) {
        return new ChordSymbol(root, Set.of(root, root.plus(4), root.plus(7)), root);
    }

    /** Returns the minor triad on a root. */
    public static ChordSymbol minor(PitchClass root) {
        return new ChordSymbol(root, Set.of(root, root.plus(3), root.plus(7)), root);
    }

    /** Returns true if the chord has a minor and no major third. */
    public boolean isMinor() {
        return tones.contains(root.plus(3)) && !tones.contains(root.plus(4));
    }

    /** Returns the chord some semitones higher. */
    public ChordSymbol plus(int semitones) {
        Set<PitchClass> moved = new TreeSet<>();
        tones.forEach(tone -> moved.add(tone.plus(semitones)));
        return new ChordSymbol(root.plus(semitones), moved, bass.plus(semitones));
    }

    /** Returns the root, with {@code m} after it for a minor chord. */
    @Override
    public String toString() {
        return root + (isMinor() ? "m" : "");
    }
}
