package org.bellowscribe.annotation.style;

import java.util.Collections;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.PitchClass;

/**
 * How the left hand is written: usually a capital letter for a bass, a small one for a chord.
 *
 * @param minor added to a minor chord
 * @param then what stands between two sounds that follow each other during one note
 * @param together what stands between two sounds struck together
 * @param pulledTwin added to a sound of the pull that the push has too, but on another button; empty for nothing
 * @param bass a bass; place {@code {note}}, its name in capital letters
 * @param chord a chord; places {@code {note}} or {@code {small}}, its name in small letters, and {@code {minor}}
 * @param andSoOn behind sounds in a rest that go on in the same way
 * @param noteNames names of notes that differ from the usual ones, such as H
 */
public record LeftHandLabels(
        String minor,
        String then,
        String together,
        String pulledTwin,
        Template bass,
        Template chord,
        String andSoOn,
        SortedMap<PitchClass, String> noteNames) {

    /** Copies the names. */
    public LeftHandLabels {
        noteNames = Collections.unmodifiableSortedMap(new TreeMap<>(noteNames));
    }

    /** Returns the name of a note in capital letters. */
    public String name(PitchClass note) {
        return noteNames.getOrDefault(note, note.toString());
    }

    /** Returns the label of a sound, such as {@code G}, {@code g} or {@code em}. */
    public String label(LeftHandSound sound) {
        String name = name(sound.root());
        if (sound.kind() == LeftHandKind.BASS) {
            return bass.with("note", name);
        }
        String added = sound.third() == Third.MINOR ? minor : "";
        String written = chord.with("note", name);
        String small = new Template(written).with("small", name.toLowerCase(Locale.ROOT));
        return new Template(small).with("minor", added);
    }
}
