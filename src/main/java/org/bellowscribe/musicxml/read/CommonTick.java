package org.bellowscribe.musicxml.read;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bellowscribe.score.Event;
import org.bellowscribe.theory.Fraction;

/**
 * The finest tick that all times of a tune share. Times are exact fractions; a tune whose times share no tick of a
 * sensible size could not be added up, so it is refused early.
 */
final class CommonTick {

    /** Parts of a quarter note; the scores of the world need 10 to 10,000. */
    private static final long FINEST = 1_000_000;

    private CommonTick() {}

    /**
     * Checks the times of a tune.
     *
     * @throws ArithmeticException if they share no tick of a millionth of a quarter note or longer
     */
    static void check(List<Event> events, List<Fraction> lengths) {
        Set<Long> denominators = new HashSet<>();
        lengths.forEach(length -> denominators.add(length.denominator()));
        for (Event event : events) {
            denominators.add(event.onset().denominator());
            denominators.add(event.duration().denominator());
        }
        long common = 1;
        for (long denominator : denominators) {
            common = Math.multiplyExact(common, denominator / gcd(common, denominator));
            if (common > FINEST) {
                throw new ArithmeticException("The times (%d parts) share no tick.".formatted(common));
            }
        }
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
