package org.bellowscribe.theory;

import java.util.List;

/**
 * A pitch without its octave.
 *
 * @param semitone 0 (C) to 11 (B)
 */
public record PitchClass(int semitone) implements Comparable<PitchClass> {

    private static final List<String> NAMES = List.of("C", "C#", "D", "Eb", "E", "F", "F#", "G", "G#", "A", "Bb", "B");

    /** Checks the range. */
    public PitchClass {
        if (semitone < 0 || semitone > 11) {
            throw new IllegalArgumentException("The semitone (%d) must be between 0 and 11.".formatted(semitone));
        }
    }

    /** Returns the pitch class of any number of semitones above a C, also negative. */
    public static PitchClass of(int semitones) {
        return new PitchClass(Math.floorMod(semitones, 12));
    }

    /**
     * Reads a letter A to G with any number of {@code #} or {@code b} after it.
     *
     * @throws IllegalArgumentException if the text is not of that form
     */
    public static PitchClass parse(String text) {
        if (!text.matches("[A-G](#*|b*)")) {
            throw new IllegalArgumentException(
                    "The note name (%s) must be a letter A to G, then # or b.".formatted(text));
        }
        int accidentals = text.length() - 1;
        return of(semitoneOf(text.charAt(0)) + (text.endsWith("b") ? -accidentals : accidentals));
    }

    /**
     * Returns the semitones above C of a letter.
     *
     * @param letter A to G
     */
    public static int semitoneOf(char letter) {
        return switch (letter) {
            case 'C' -> 0;
            case 'D' -> 2;
            case 'E' -> 4;
            case 'F' -> 5;
            case 'G' -> 7;
            case 'A' -> 9;
            case 'B' -> 11;
            default -> throw new IllegalArgumentException("The letter (%s) must be A to G.".formatted(letter));
        };
    }

    /** Returns the pitch class some semitones higher (or lower, if negative). */
    public PitchClass plus(int semitones) {
        return of(semitone + semitones);
    }

    /** Returns how many semitones this lies above another, 0 to 11. */
    public int above(PitchClass other) {
        return Math.floorMod(semitone - other.semitone, 12);
    }

    @Override
    public int compareTo(PitchClass other) {
        return Integer.compare(semitone, other.semitone);
    }

    /** Returns the usual name on a melodeon: C, C#, D, Eb, E, F, F#, G, G#, A, Bb, B. */
    @Override
    public String toString() {
        return NAMES.get(semitone);
    }
}
