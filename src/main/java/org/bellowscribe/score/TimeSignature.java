package org.bellowscribe.score;

import org.bellowscribe.theory.Fraction;

/**
 * A time signature.
 *
 * @param beats upper number (the sum, for 3+2), 1 or more
 * @param beatType lower number, 1 or more
 */
public record TimeSignature(int beats, int beatType) {

    /** Returns the length of a full measure. */
    public Fraction measureLength() {
        return Fraction.of(4L * beats, beatType);
    }

    /** Returns true for 6/8, 9/8, 12/8 and their like, whose pulse is three of the written beats. */
    public boolean isCompound() {
        return beatType >= 8 && beats > 3 && beats % 3 == 0;
    }

    /** Returns the length of the felt pulse: three eighths in 6/8, a quarter in 4/4 and 2/4, a half in 2/2. */
    public Fraction pulse() {
        return isCompound() ? Fraction.of(12, beatType) : Fraction.of(4, beatType);
    }

    @Override
    public String toString() {
        return beats + "/" + beatType;
    }
}
