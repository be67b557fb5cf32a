package org.bellowscribe.accompaniment;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;

/**
 * The chord that written notes make.
 *
 * @param chord the chord; its root is its bass, because the basses of an instrument have buttons of their own
 * @param isPlain true if the notes are a major chord, a minor chord or an open fifth in any inversion; else the chord is
 *     built on the lowest note
 */
record WrittenChord(ChordSymbol chord, boolean isPlain) {

    private static final int MINOR_THIRD = 3;
    private static final int MAJOR_THIRD = 4;
    private static final int FIFTH = 7;

    /**
     * Returns the chord of some notes.
     *
     * @param pitches lowest first; one or more
     */
    static WrittenChord of(List<Pitch> pitches) {
        Set<PitchClass> tones = pitches.stream().map(Pitch::pitchClass).collect(Collectors.toCollection(TreeSet::new));
        for (PitchClass root : tones) {
            for (ChordSymbol plain : List.of(ChordSymbol.major(root), ChordSymbol.minor(root), fifth(root))) {
                if (plain.tones().equals(tones)) {
                    return new WrittenChord(plain, true);
                }
            }
        }
        return new WrittenChord(on(pitches.get(0).pitchClass(), tones), false);
    }

    /** Returns a root and its fifth, which leaves open whether major or minor is meant. */
    static ChordSymbol fifth(PitchClass root) {
        return new ChordSymbol(root, Set.of(root, root.plus(FIFTH)), root);
    }

    private static ChordSymbol on(PitchClass root, Set<PitchClass> tones) {
        if (tones.contains(root.plus(MAJOR_THIRD))) {
            return ChordSymbol.major(root);
        }
        return tones.contains(root.plus(MINOR_THIRD)) ? ChordSymbol.minor(root) : fifth(root);
    }
}
