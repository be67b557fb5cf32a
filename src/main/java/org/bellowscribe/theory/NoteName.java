package org.bellowscribe.theory;

/**
 * A note with its spelling.
 *
 * @param letter A to G
 * @param alter semitones that accidentals add, negative for flats
 * @param octave octave of the letter; 4 begins at middle C
 */
public record NoteName(char letter, int alter, int octave) {

    private static final String LETTERS = "CDEFGAB";
    private static final int MOST_ACCIDENTALS = 2;

    /** Checks the letter. */
    public NoteName {
        if (LETTERS.indexOf(letter) < 0) {
            throw new IllegalArgumentException("The letter (%s) must be A to G.".formatted(letter));
        }
    }

    /** Returns the pitch in semitones; 60 is middle C; any number. */
    public int midiNumber() {
        return 12 * (octave + 1) + PitchClass.semitoneOf(letter) + alter;
    }

    /**
     * Returns the note an interval higher. The interval decides the letter, unless that would take more than two
     * accidentals: then the nearest letter that takes fewer.
     */
    public NoteName plus(Interval interval) {
        int midiNumber = midiNumber() + interval.semitones();
        int place = place() + interval.steps();
        NoteName moved = at(place, midiNumber);
        while (Math.abs(moved.alter) > MOST_ACCIDENTALS) {
            place += Integer.signum(moved.alter);
            moved = at(place, midiNumber);
        }
        return moved;
    }

    /**
     * Returns a note on another letter.
     *
     * @param letters how many letters higher, lower if negative
     * @param otherAlter its accidentals
     */
    public NoteName neighbor(int letters, int otherAlter) {
        int place = place() + letters;
        return new NoteName(LETTERS.charAt(Math.floorMod(place, 7)), otherAlter, Math.floorDiv(place, 7));
    }

    private int place() {
        return 7 * octave + LETTERS.indexOf(letter);
    }

    private static NoteName at(int place, int midiNumber) {
        char letter = LETTERS.charAt(Math.floorMod(place, 7));
        NoteName natural = new NoteName(letter, 0, Math.floorDiv(place, 7));
        return new NoteName(letter, midiNumber - natural.midiNumber(), natural.octave);
    }

    /** Returns a name such as {@code F#4}. */
    @Override
    public String toString() {
        return letter + (alter < 0 ? "b" : "#").repeat(Math.abs(alter)) + octave;
    }
}
