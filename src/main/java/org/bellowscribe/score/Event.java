package org.bellowscribe.score;

import java.util.List;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Pitch;

/**
 * A written moment of the melody where something must be played: a note group (notes struck together) or a rest. Tied
 * notes are one event. Grace notes are no events.
 *
 * @param index 0-based place among the events of the tune, in score order
 * @param measure 0-based index of the measure in which it starts
 * @param onset time from the start of that measure
 * @param duration sounding length through all ties, more than 0
 * @param pitches sounding pitches, lowest first; empty for a rest
 * @param noteIndices for each pitch in the same order (for a rest: for the rest itself, one entry; for a gap that the
 *     score leaves empty: none) the 0-based place of its first {@code <note>} among all {@code <note>} elements of the
 *     file that are children of a measure, in document order, whatever their part
 * @param heldOver true if the notes only sound on from the event before, to which they are tied, whatever measure that is
 *     in: over a bar line where the playing may also go another way
 * @param slurred true if a slur leads here from the event before in score order: one stroke of the bellows, as of a bow
 */
public record Event(
        int index,
        int measure,
        Fraction onset,
        Fraction duration,
        List<Pitch> pitches,
        List<Integer> noteIndices,
        boolean heldOver,
        boolean slurred) {

    /** Creates an event that is struck and under no slur, or a rest. */
    public Event(
            int index, int measure, Fraction onset, Fraction duration, List<Pitch> pitches, List<Integer> noteIndices) {
        this(index, measure, onset, duration, pitches, noteIndices, false, false);
    }

    /** Copies the lists. */
    public Event {
        pitches = List.copyOf(pitches);
        noteIndices = List.copyOf(noteIndices);
    }

    /** Returns true if nothing sounds. */
    public boolean isRest() {
        return pitches.isEmpty();
    }

    /** Returns this moment without its sound. */
    public Event silent() {
        return new Event(index, measure, onset, duration, List.of(), noteIndices);
    }

    /** Returns true if no {@code <note>} of the file stands for this: a rest that the score leaves empty. */
    public boolean isGap() {
        return noteIndices.isEmpty();
    }

    /**
     * Returns the place of the {@code <note>} that carries marks: the first of the group in document order.
     *
     * @throws java.util.NoSuchElementException if this is a gap
     */
    public int firstNoteIndex() {
        return noteIndices.stream().mapToInt(Integer::intValue).min().orElseThrow();
    }
}
