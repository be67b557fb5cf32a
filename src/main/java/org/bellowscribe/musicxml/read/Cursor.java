package org.bellowscribe.musicxml.read;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.bellowscribe.theory.Fraction;

/** Where the reading of a measure stands in time. */
final class Cursor {

    private Fraction divisions;
    private Fraction position = Fraction.ZERO;
    private Fraction furthest = Fraction.ZERO;
    private Fraction group = Fraction.ZERO;
    private boolean hasGroup;
    private int turnedBack;

    /**
     * Creates a cursor.
     *
     * @param divisions how many divisions a quarter note has until the score says otherwise
     */
    Cursor(Fraction divisions) {
        this.divisions = divisions;
    }

    void startMeasure() {
        position = Fraction.ZERO;
        furthest = Fraction.ZERO;
        hasGroup = false;
        turnedBack = 0;
    }

    void divisions(BigDecimal value) {
        if (value.signum() > 0) {
            divisions = fraction(value);
        }
    }

    /** Returns a number of divisions in quarter notes. */
    Fraction quarters(BigDecimal value) {
        return fraction(value).dividedBy(divisions);
    }

    Fraction position() {
        return position;
    }

    /** Returns true if a note came before in this measure, so that a chord note has a group to join. */
    boolean hasGroup() {
        return hasGroup;
    }

    /** Returns the onset of the note group that a chord note joins. */
    Fraction group() {
        return group;
    }

    Fraction furthest() {
        return furthest;
    }

    /** Returns how often the reading went back in this measure. */
    int turnedBack() {
        return turnedBack;
    }

    /** Moves on by a note or rest that starts here. */
    void note(Fraction duration) {
        group = position;
        hasGroup = true;
        forward(duration);
    }

    void forward(Fraction duration) {
        position = position.plus(duration);
        furthest = furthest.compareTo(position) < 0 ? position : furthest;
    }

    /** Moves back, at most to the start of the measure. */
    void back(Fraction duration) {
        turnedBack++;
        Fraction earlier = position.minus(duration);
        position = earlier.numerator() < 0 ? Fraction.ZERO : earlier;
    }

    static Fraction fraction(BigDecimal value) {
        BigDecimal plain = value.stripTrailingZeros();
        int scale = Math.max(0, plain.scale());
        return Fraction.of(
                plain.setScale(scale).unscaledValue().longValueExact(),
                BigInteger.TEN.pow(scale).longValueExact());
    }
}
