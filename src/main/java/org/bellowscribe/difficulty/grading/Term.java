package org.bellowscribe.difficulty.grading;

import java.util.Locale;

/**
 * A thing that makes a tune difficult. "By speed" means that each one counts as the square of a quarter of a second over
 * the time that there is for it, four at the most: what teachers count double when there is less than a quarter of a
 * second (two blind rankings of 22 tunes, made for this project).
 */
public enum Term {
    /** Notes struck in a second, groups as one, in the hardest eight seconds. */
    NOTES("notes", "a second"),
    /**
     * Of the 32 notes in a row that are worst off, how many the row that suits best does not push: they are pulled, on
     * another row, or out of the usual keys.
     */
    OFF_PUSH("notes off the push of the home row", "of 32 in a row"),
    /**
     * Of the 32 notes in a row that are worst off, how many lie on one button in one direction only: there the player has
     * no choice of bellows.
     */
    ONE_WAY("notes that lie one way only", "of 32 in a row"),
    /**
     * Reversals to another button in a second, by speed. This and the next five are counted in the easiest way to play the
     * eight seconds in which even that way adds most points.
     */
    REVERSALS("reversals, by speed", "a second"),
    /** Reversals on a button that stays down in a second, by speed. */
    HELD_REVERSALS("held reversals, by speed", "a second"),
    /** Reversals with quick notes on both sides, by the speed of the slowest of the three steps. */
    QUICK_TURNS("quick turns inside runs, by speed", "a second"),
    /** Changes of the row, by speed. */
    ROW_CHANGES("row changes, by speed", "a second"),
    /** Moves of the hand along the rows, by speed. */
    SHIFTS("moves of the hand, by speed", "a second"),
    /** Steps of a minor sixth and more, by speed. */
    LEAPS("leaps of a sixth and more, by speed", "a second"),
    /** Fingers that leave their own button. */
    STRETCHES("stretches", "a second"),
    /** Semitones between the lowest and the highest note beyond an octave. */
    RANGE("range beyond an octave", "semitones"),
    /** Strokes that the left hand is asked for between two notes of the melody, by speed. */
    LEFT_HAND_BETWEEN("left hand between notes, by speed", "a second"),
    /** Basses and chords on another button than the last time that they sounded, in the marks. */
    TWIN_BASSES("basses on their twin button", "a second"),
    /**
     * Quarters by which the bellows must end farther open or closed after 32 notes in a row, whichever way the notes that
     * lie both ways are played: what only the air button gives back.
     */
    DRIFT("drift of the bellows", "quarters"),
    /** Presses of the air button in the marks, each by how short its note is: half a second over its length, four at the most. */
    AIR("air marks, by length of note", "a minute"),
    /** Notes without a rest or a note of three quarters of a second in between. */
    RUN("longest run without a breath", "notes");

    private final String label;
    private final String unit;

    Term(String label, String unit) {
        this.label = label;
        this.unit = unit;
    }

    /** Returns its name in a file, such as {@code held-reversals}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns what a teacher reads. */
    public String label() {
        return label;
    }

    /** Returns what its figure counts in, such as {@code a second}. */
    public String unit() {
        return unit;
    }
}
