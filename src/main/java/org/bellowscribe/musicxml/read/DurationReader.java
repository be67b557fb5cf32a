package org.bellowscribe.musicxml.read;

import java.math.BigInteger;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.TimeModification;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/** How long a note is: its duration, or else its printed shape. */
final class DurationReader {

    private static final String SHAPES =
            "1024th 512th 256th 128th 64th 32nd 16th eighth quarter half whole breve long maxima";
    private static final int QUARTER = 8;

    private DurationReader() {}

    /** Returns the length of a note, or null if the score says nothing. */
    static @Nullable Fraction read(Note note, Cursor cursor) {
        if (note.getDuration() != null && note.getDuration().signum() > 0) {
            return cursor.quarters(note.getDuration());
        }
        return shape(note);
    }

    /** Returns the length that the printed shape of a note means, or null if it has none. */
    static @Nullable Fraction shape(Note note) {
        if (note.getType() == null || note.getType().getValue() == null) {
            return null;
        }
        Fraction length =
                dotted(quarters(note.getType().getValue()), note.getDot().size());
        TimeModification tuplet = note.getTimeModification();
        if (tuplet == null || tuplet.getActualNotes() == null || tuplet.getNormalNotes() == null) {
            return length;
        }
        BigInteger actual = tuplet.getActualNotes();
        BigInteger normal = tuplet.getNormalNotes();
        return actual.signum() == 0 || normal.signum() == 0
                ? length
                : length.times(Fraction.of(normal.longValue(), actual.longValue()));
    }

    /** Returns the length of a shape named as in MusicXML; a quarter for an unknown name. */
    static Fraction quarters(String shape) {
        int index = java.util.List.of(SHAPES.split(" ")).indexOf(shape);
        int power = index < 0 ? 0 : index - QUARTER;
        return power >= 0 ? Fraction.of(1L << power, 1) : Fraction.of(1, 1L << -power);
    }

    /** Returns a length with dots; each adds half of what the one before added. */
    static Fraction dotted(Fraction length, int dots) {
        long whole = 1L << Math.min(dots, 10);
        return length.times(Fraction.of(2 * whole - 1, whole));
    }
}
