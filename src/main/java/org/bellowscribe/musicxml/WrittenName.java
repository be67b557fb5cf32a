package org.bellowscribe.musicxml;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.bellowscribe.theory.NoteName;
import org.jspecify.annotations.Nullable;

/**
 * A note as it is written.
 *
 * @param name the note, lowered to the next whole semitone
 * @param fraction what was taken off, from 0 to less than 1 semitone
 */
record WrittenName(NoteName name, BigDecimal fraction) {

    private static final int NO_OCTAVE = 4;
    private static final int MOST_ALTER = 10;

    /**
     * Reads a note; returns null if it cannot be read.
     *
     * @param alter element of the semitones, or null for none
     * @param octave element of the octave, or null for a note without octave
     */
    static @Nullable WrittenName of(XmlElement step, @Nullable XmlElement alter, @Nullable XmlElement octave) {
        String letter = step.plainContent();
        String semitones = alter == null || alter.plainContent().isEmpty() ? "0" : alter.plainContent();
        String number = octave == null ? String.valueOf(NO_OCTAVE) : octave.plainContent();
        if (!letter.matches("[A-G]")
                || !semitones.matches("[+-]?[0-9]{1,2}(\\.[0-9]{0,9})?")
                || !number.matches("[0-9]")) {
            return null;
        }
        BigDecimal value = new BigDecimal(semitones);
        BigDecimal whole = value.setScale(0, RoundingMode.FLOOR);
        if (whole.abs().intValue() > MOST_ALTER) {
            return null;
        }
        NoteName name = new NoteName(letter.charAt(0), whole.intValue(), Integer.parseInt(number));
        return new WrittenName(name, value.subtract(whole));
    }

    /** Returns the semitones to write for this note once it has moved. */
    String alter(NoteName moved) {
        BigDecimal value = fraction.add(BigDecimal.valueOf(moved.alter()));
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
