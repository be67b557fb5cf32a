package org.bellowscribe.musicxml.read;

import java.util.List;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/**
 * What one measure of a part holds.
 *
 * @param number printed number; may be empty
 * @param notes notes and rests in document order
 * @param harmonies chord symbols in document order
 * @param words words of directions in document order
 * @param length the furthest time reached
 * @param time time signature in force, or null if none was given yet
 * @param free true if the measure is free of the time signature (senza misura)
 * @param key key signature in force, or null if none was given yet
 * @param repeatsLast true if it is written as a sign that repeats the measure before
 */
record MeasureContent(
        String number,
        List<WrittenNote> notes,
        List<WrittenHarmony> harmonies,
        List<WrittenWords> words,
        Fraction length,
        @Nullable TimeSignature time,
        boolean free,
        @Nullable KeySignature key,
        boolean repeatsLast) {}
