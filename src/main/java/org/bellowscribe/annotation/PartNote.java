package org.bellowscribe.annotation;

import java.util.List;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.NoteName;

/**
 * What the left hand strikes at one moment, written out.
 *
 * @param onset time from the start of the measure
 * @param duration how long it sounds, within the measure
 * @param notes the notes, lowest first
 * @param label the letters below it
 * @param fingers the fingers to write at it, 1 to 5; may be empty
 */
public record PartNote(Fraction onset, Fraction duration, List<NoteName> notes, String label, List<Integer> fingers) {

    /** Copies the lists. */
    public PartNote {
        notes = List.copyOf(notes);
        fingers = List.copyOf(fingers);
    }

    /** Returns when it ends. */
    public Fraction end() {
        return onset.plus(duration);
    }
}
