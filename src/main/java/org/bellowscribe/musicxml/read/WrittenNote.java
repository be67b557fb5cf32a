package org.bellowscribe.musicxml.read;

import java.util.List;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/**
 * A note or rest as written; grace notes are left out.
 *
 * @param noteIndex 0-based place among all notes of the file
 * @param voice name of its voice
 * @param staff number of its staff, from 1
 * @param onset time from the start of its measure
 * @param duration how long it is
 * @param sort what it is
 * @param pitch sounding pitch of a note; null for others and where {@code bad} says why
 * @param tieStart true if it is tied to the next note
 * @param tieStop true if it is tied to the note before
 * @param slurs ends of slurs at the note
 * @param bad the value that keeps it from being played, or null
 */
record WrittenNote(
        int noteIndex,
        String voice,
        int staff,
        Fraction onset,
        Fraction duration,
        Sort sort,
        @Nullable Pitch pitch,
        boolean tieStart,
        boolean tieStop,
        List<SlurEnd> slurs,
        @Nullable OddValue bad) {

    /** What a note element is to a melody player. */
    enum Sort {
        /** A note to play. */
        NOTE,
        /** A rest. */
        REST,
        /** Something that takes time but is not played: a cue or an unpitched note. */
        SILENT,
        /** A note with a slash for a head: it shows a rhythm, not a pitch. */
        SLASHED,
        /** A note that is not printed: the player cannot see it. */
        HIDDEN
    }

    /**
     * One end of a slur.
     *
     * @param number tells slurs apart that overlap
     * @param starts true if the slur starts at the note, false if it stops there
     */
    record SlurEnd(int number, boolean starts) {}

    boolean isNote() {
        return sort == Sort.NOTE;
    }

    Fraction end() {
        return onset.plus(duration);
    }
}
