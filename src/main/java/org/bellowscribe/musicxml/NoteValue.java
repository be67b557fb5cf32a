package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/**
 * A value that one note or rest can have on paper.
 *
 * @param length length in quarters
 * @param type MusicXML's name of the value
 * @param isDotted true if a dot makes it longer by half
 * @param isTriplet true if three are played in the time of two
 */
record NoteValue(Fraction length, String type, boolean isDotted, boolean isTriplet) {

    private static final List<String> TYPES =
            List.of("breve", "whole", "half", "quarter", "eighth", "16th", "32nd", "64th", "128th", "256th");
    private static final Fraction BREVE = Fraction.of(8, 1);
    private static final Fraction HALF = Fraction.of(1, 2);
    private static final Fraction DOTTED = Fraction.of(3, 2);
    private static final Fraction TRIPLET = Fraction.of(2, 3);
    private static final int MOST = 6;

    NoteValue(Fraction length, String type, boolean isDotted) {
        this(length, type, isDotted, false);
    }

    /** Returns values that tied together last a time, the longest first; the nearest one below if none do. */
    static List<NoteValue> tied(Fraction time) {
        List<NoteValue> plain = sum(time);
        if (!plain.isEmpty()) {
            return plain;
        }
        List<NoteValue> triplets = sum(time.dividedBy(TRIPLET)).stream()
                .map(value -> new NoteValue(value.length.times(TRIPLET), value.type, value.isDotted, true))
                .toList();
        NoteValue below = atMost(time);
        return !triplets.isEmpty() ? triplets : below == null ? List.of() : List.of(below);
    }

    private static List<NoteValue> sum(Fraction time) {
        List<NoteValue> values = new ArrayList<>();
        Fraction left = time;
        while (left.isPositive() && values.size() < MOST) {
            NoteValue value = atMost(left);
            if (value == null) {
                return List.of();
            }
            values.add(value);
            left = left.minus(value.length);
        }
        return left.isPositive() ? List.of() : values;
    }

    /** Returns the longest value, dotted or not, that is not longer than a time; null if all are longer. */
    static @Nullable NoteValue atMost(Fraction time) {
        Fraction plain = BREVE;
        for (String type : TYPES) {
            Fraction dotted = plain.times(DOTTED);
            if (dotted.compareTo(time) <= 0) {
                return new NoteValue(dotted, type, true);
            }
            if (plain.compareTo(time) <= 0) {
                return new NoteValue(plain, type, false);
            }
            plain = plain.times(HALF);
        }
        return null;
    }

    /**
     * Returns the longest value without dot that begins on a multiple of itself, as rests are written.
     *
     * @param place time since the bar line
     * @param time the most that it may last
     * @return null if there is none
     */
    static @Nullable NoteValue rest(Fraction place, Fraction time) {
        Fraction plain = BREVE;
        for (String type : TYPES) {
            boolean fits = plain.compareTo(time) <= 0;
            // A multiple of the value: their quotient is whole.
            if (fits && place.dividedBy(plain).denominator() == 1) {
                return new NoteValue(plain, type, false);
            }
            plain = plain.times(HALF);
        }
        return null;
    }
}
