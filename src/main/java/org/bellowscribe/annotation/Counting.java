package org.bellowscribe.annotation;

import org.bellowscribe.annotation.style.PracticeLabels;
import org.bellowscribe.score.Measure;
import org.bellowscribe.theory.Fraction;

/**
 * How a measure is counted aloud: the lower number of the time has the numbers, so 6/8 is counted to six and 5/4 to five;
 * halves, quarters and thirds of a beat have words of their own, all else has none (common practice, no source).
 *
 * @param measure the measure
 * @param labels the words between the beats
 */
public record Counting(Measure measure, PracticeLabels labels) {

    /** Returns the length of what has a number, in quarters. */
    public Fraction unit() {
        return Fraction.of(4, measure.time().beatType());
    }

    /** Returns the time from the start of the measure to its first beat: less than a unit. */
    public Fraction toFirstBeat() {
        Fraction places = measure.beatOffset().dividedBy(unit());
        Fraction part = fraction(places);
        return part.isPositive() ? Fraction.of(1, 1).minus(part).times(unit()) : Fraction.ZERO;
    }

    /**
     * Returns what is counted at a moment; empty if there is no word for it.
     *
     * @param onset time from the start of the measure
     */
    public String at(Fraction onset) {
        Fraction place = onset.plus(measure.beatOffset()).dividedBy(unit());
        Fraction part = fraction(place);
        if (!part.isPositive()) {
            return String.valueOf(place.numerator() / place.denominator() + 1);
        }
        return switch (part.toString()) {
            case "1/2" -> labels.half();
            case "1/4" -> labels.quarter();
            case "3/4" -> labels.lastQuarter();
            case "1/3" -> labels.third();
            case "2/3" -> labels.lastThird();
            default -> "";
        };
    }

    private static Fraction fraction(Fraction number) {
        long whole = Math.floorDiv(number.numerator(), number.denominator());
        return number.minus(Fraction.of(whole, 1));
    }
}
