package org.bellowscribe.annotation.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.bellowscribe.annotation.LetteredPart;
import org.bellowscribe.annotation.style.LeftHandLabels;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.PitchClass;

/**
 * Knows the written-out left hand again whose id a notation program has dropped: the letters below all that it strikes name
 * just the notes above them, or, on a sheet that keeps its notes, notes that are all as far away.
 */
public final class LostPart {

    private static final int SEMITONES = 12;

    private LostPart() {}

    /**
     * Tells whether a part is one that we wrote.
     *
     * @param labels how letters are written
     */
    public static boolean isOurs(LetteredPart part, LeftHandLabels labels) {
        for (int moved = 0; moved < SEMITONES; moved++) {
            int semitones = moved;
            if (part.groups().stream().allMatch(group -> isNamed(group, semitones, labels))) {
                return !part.groups().isEmpty();
            }
        }
        return false;
    }

    private static boolean isNamed(LetteredPart.Group group, int semitones, LeftHandLabels labels) {
        List<SortedSet<PitchClass>> possible = new ArrayList<>(List.of(new TreeSet<>()));
        for (String label : group.text().strip().split(Pattern.quote(labels.together()), -1)) {
            List<SortedSet<PitchClass>> longer = new ArrayList<>();
            for (SortedSet<PitchClass> tones : meanings(label, semitones, labels)) {
                for (SortedSet<PitchClass> before : possible) {
                    SortedSet<PitchClass> all = new TreeSet<>(before);
                    all.addAll(tones);
                    longer.add(all);
                }
            }
            possible = longer;
        }
        return possible.contains(group.notes());
    }

    private static List<SortedSet<PitchClass>> meanings(String label, int semitones, LeftHandLabels labels) {
        List<SortedSet<PitchClass>> meanings = new ArrayList<>();
        for (int root = 0; root < SEMITONES; root++) {
            List<LeftHandSound> sounds = new ArrayList<>(List.of(LeftHandSound.bass(PitchClass.of(root))));
            for (Third third : Third.values()) {
                sounds.add(LeftHandSound.chord(PitchClass.of(root), third));
            }
            sounds.stream()
                    .filter(sound -> labels.label(sound).equals(label))
                    .forEach(sound -> meanings.add(tones(sound, semitones)));
        }
        return meanings;
    }

    private static SortedSet<PitchClass> tones(LeftHandSound sound, int semitones) {
        SortedSet<PitchClass> tones = new TreeSet<>();
        sound.tones().forEach(tone -> tones.add(tone.plus(semitones)));
        return tones;
    }
}
