package org.bellowscribe.theory;

/**
 * An exact musical time in quarter notes, always in lowest terms.
 *
 * @param numerator may be negative
 * @param denominator 1 or more
 */
public record Fraction(long numerator, long denominator) implements Comparable<Fraction> {

    /** No time at all. */
    public static final Fraction ZERO = new Fraction(0, 1);

    /** One quarter note. */
    public static final Fraction QUARTER = new Fraction(1, 1);

    /** Reduces to lowest terms. */
    public Fraction {
        if (denominator == 0) {
            throw new IllegalArgumentException("The denominator (0) must not be zero.");
        }
        long divisor = gcd(Math.abs(numerator), Math.abs(denominator));
        long sign = denominator < 0 ? -1 : 1;
        numerator = sign * numerator / divisor;
        denominator = sign * denominator / divisor;
    }

    /**
     * Returns a time.
     *
     * @param numerator may be negative
     * @param denominator not zero
     */
    public static Fraction of(long numerator, long denominator) {
        return new Fraction(numerator, denominator);
    }

    /**
     * Reads {@code "n/d"} or a whole number.
     *
     * @throws NumberFormatException if the text is neither
     */
    public static Fraction parse(String text) {
        int slash = text.indexOf('/');
        return slash < 0
                ? of(Long.parseLong(text), 1)
                : of(Long.parseLong(text.substring(0, slash)), Long.parseLong(text.substring(slash + 1)));
    }

    /** Returns the sum. */
    public Fraction plus(Fraction other) {
        return of(
                Math.addExact(
                        Math.multiplyExact(numerator, other.denominator),
                        Math.multiplyExact(other.numerator, denominator)),
                Math.multiplyExact(denominator, other.denominator));
    }

    /** Returns the difference. */
    public Fraction minus(Fraction other) {
        return plus(of(-other.numerator, other.denominator));
    }

    /** Returns the product. */
    public Fraction times(Fraction other) {
        return of(Math.multiplyExact(numerator, other.numerator), Math.multiplyExact(denominator, other.denominator));
    }

    /**
     * Returns the quotient.
     *
     * @param other not zero
     */
    public Fraction dividedBy(Fraction other) {
        return times(of(/* numerator= */ other.denominator, /* denominator= */ other.numerator));
    }

    /** Returns the nearest double. */
    public double toDouble() {
        return (double) numerator / denominator;
    }

    /** Returns true if this is more than zero. */
    public boolean isPositive() {
        return numerator > 0;
    }

    /** Returns the smaller of two times. */
    public static Fraction min(Fraction a, Fraction b) {
        return a.compareTo(b) <= 0 ? a : b;
    }

    @Override
    public int compareTo(Fraction other) {
        return Long.compare(
                Math.multiplyExact(numerator, other.denominator), Math.multiplyExact(other.numerator, denominator));
    }

    /** Returns {@code "n/d"}, also for whole numbers. */
    @Override
    public String toString() {
        return numerator + "/" + denominator;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? Math.max(a, 1) : gcd(b, a % b);
    }
}
