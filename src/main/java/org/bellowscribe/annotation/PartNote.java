package org.bellowscribe.annotation;

import java.util.List;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.NoteName;

/**
 * What is struck at one moment of a part of ours.
 *
 * @param onset time from the start of the measure
 * @param duration how long it sounds, within the measure
 * @param notes the notes, lowest first; empty for a stroke without pitch
 * @param syllables the texts below it, from the uppermost line; may be empty
 * @param fingers the fingers to write at it, 1 to 5; may be empty
 */
public record PartNote(
        Fraction onset, Fraction duration, List<NoteName> notes, List<PartSyllable> syllables, List<Integer> fingers) {

    /** Copies the lists. */
    public PartNote {
        notes = List.copyOf(notes);
        syllables = List.copyOf(syllables);
        fingers = List.copyOf(fingers);
    }

    /** Creates what the left hand strikes, with its letters. */
    public PartNote(Fraction onset, Fraction duration, List<NoteName> notes, String label, List<Integer> fingers) {
        this(onset, duration, notes, List.of(new PartSyllable(MarkLines.LEFT_HAND, 1, label)), fingers);
    }

    /** Returns the uppermost text below it; empty if there is none. */
    public String label() {
        return syllables.isEmpty() ? "" : syllables.get(0).text();
    }

    /** Returns when it ends. */
    public Fraction end() {
        return onset.plus(duration);
    }
}
