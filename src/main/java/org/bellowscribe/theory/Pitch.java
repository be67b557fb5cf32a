package org.bellowscribe.theory;

/**
 * A sounding pitch.
 *
 * @param midiNumber semitones, 60 is C4 (middle C); 0 to 127
 */
public record Pitch(int midiNumber) implements Comparable<Pitch> {

    /** Checks the range. */
    public Pitch {
        if (midiNumber < 0 || midiNumber > 127) {
            throw new IllegalArgumentException("The midiNumber (%d) must be between 0 and 127.".formatted(midiNumber));
        }
    }

    /**
     * Reads a name such as {@code F#4}: letter, accidentals, octave.
     *
     * @throws IllegalArgumentException if the text is not of that form
     */
    public static Pitch parse(String text) {
        if (!text.matches("[A-G](#*|b*)-?[0-9]")) {
            throw new IllegalArgumentException(
                    "The pitch (%s) must be a note name and an octave, such as F#4.".formatted(text));
        }
        int end = text.length() - (text.contains("-") ? 2 : 1);
        int alter = (int) text.chars().filter(c -> c == '#').count()
                - (int) text.chars().filter(c -> c == 'b').count();
        return new Pitch(
                12 * (Integer.parseInt(text.substring(end)) + 1) + PitchClass.semitoneOf(text.charAt(0)) + alter);
    }

    /** Returns the pitch without its octave. */
    public PitchClass pitchClass() {
        return PitchClass.of(midiNumber);
    }

    /** Returns the pitch some semitones higher (or lower, if negative). */
    public Pitch plus(int semitones) {
        return new Pitch(midiNumber + semitones);
    }

    /** Returns the frequency in hertz in equal temperament with A4 = 440 Hz. */
    public double frequency() {
        return 440 * StrictMath.pow(2, (midiNumber - 69) / 12.0);
    }

    @Override
    public int compareTo(Pitch other) {
        return Integer.compare(midiNumber, other.midiNumber);
    }

    /** Returns a name such as {@code F#4}. */
    @Override
    public String toString() {
        return pitchClass().toString() + (Math.floorDiv(midiNumber, 12) - 1);
    }
}
