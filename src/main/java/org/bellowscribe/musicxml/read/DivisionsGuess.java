package org.bellowscribe.musicxml.read;

import java.math.BigDecimal;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.ScorePartwise.Part;
import org.audiveris.proxymusic.ScorePartwise.Part.Measure;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/** Finds the divisions of a quarter note for a part that does not give them before its first note. */
final class DivisionsGuess {

    private DivisionsGuess() {}

    /** Returns true if a note, rest or move in time comes before the divisions. */
    static boolean areMissing(Part part) {
        for (Measure measure : part.getMeasure()) {
            for (Object element : measure.getNoteOrBackupOrForward()) {
                if (element instanceof Attributes each && given(each) != null) {
                    return false;
                }
                if (element instanceof Note note && note.getDuration() != null) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Returns the likely divisions: what makes the first note as long as it is printed, else those of another part, else
     * 1.
     */
    static Fraction guess(Part part, ScorePartwise score) {
        for (Measure measure : part.getMeasure()) {
            for (Object element : measure.getNoteOrBackupOrForward()) {
                if (element instanceof Note note && note.getGrace() == null && note.getDuration() != null) {
                    Fraction shape = DurationReader.shape(note);
                    if (shape != null && note.getDuration().signum() > 0) {
                        return Cursor.fraction(note.getDuration()).dividedBy(shape);
                    }
                }
            }
        }
        return ofOtherParts(score);
    }

    private static Fraction ofOtherParts(ScorePartwise score) {
        for (Part part : score.getPart()) {
            for (Measure measure : part.getMeasure()) {
                for (Object element : measure.getNoteOrBackupOrForward()) {
                    BigDecimal divisions = element instanceof Attributes each ? given(each) : null;
                    if (divisions != null) {
                        return Cursor.fraction(divisions);
                    }
                }
            }
        }
        return Fraction.QUARTER;
    }

    private static @Nullable BigDecimal given(Attributes attributes) {
        BigDecimal divisions = attributes.getDivisions();
        return divisions != null && divisions.signum() > 0 ? divisions : null;
    }
}
