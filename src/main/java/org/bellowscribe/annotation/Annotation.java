package org.bellowscribe.annotation;

import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;

/** Something to write on the sheet, at a note. */
public sealed interface Annotation {

    /**
     * Returns the place of the {@code <note>} it belongs to: 0-based among all {@code <note>} elements of the file that
     * are children of a measure, in document order.
     */
    int noteIndex();

    /**
     * A syllable of one of our lyric lines below the staff.
     *
     * @param noteIndex the note; the first of its group
     * @param line 0-based place of the line among ours, from the top; lines in use are contiguous
     * @param name name of the line, such as {@code buttons}; the writer puts our prefix before it
     * @param text text, never empty
     */
    record Syllable(int noteIndex, int line, String name, String text) implements Annotation {}

    /**
     * Words above or below the staff, starting at a note. At most one above and one below for a note.
     *
     * @param noteIndex the note or rest before which the direction stands
     * @param above true above the staff, false below
     * @param text text, never empty
     */
    record Words(int noteIndex, boolean above, String text) implements Annotation {}

    /**
     * A line of words below the staff that is about the tune as a whole. Several of them at a note stand below each other.
     *
     * @param noteIndex the note or rest before which the direction stands
     * @param text text, never empty, so short that it has room below half a system
     */
    record Line(int noteIndex, String text) implements Annotation {}

    /**
     * A finger number at a note head.
     *
     * @param noteIndex the note
     * @param finger 1 to 5
     */
    record Finger(int noteIndex, int finger) implements Annotation {}

    /**
     * A sign of the standard music font layout that no program is known to draw yet, for those that will.
     *
     * @param noteIndex the note
     * @param smufl canonical name of the glyph in SMuFL, such as {@code accdnPush}
     */
    record Sign(int noteIndex, String smufl) implements Annotation {}

    /**
     * A bracket above notes.
     *
     * @param noteIndex the note with which it begins
     * @param last the note behind which it ends, the same or one behind it
     */
    record Bracket(int noteIndex, int last) implements Annotation {}

    /**
     * A chord symbol.
     *
     * @param noteIndex the note or rest before which it stands
     * @param offset time from the start of the note
     * @param root root, as the sheet sounds
     * @param third its third; {@code NONE} for a chord without
     * @param bass its bass; the root unless there is another
     */
    record Symbol(int noteIndex, Fraction offset, PitchClass root, Third third, PitchClass bass)
            implements Annotation {}
}
