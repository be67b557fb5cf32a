package org.bellowscribe.theory;

import java.util.Collection;
import java.util.List;

/**
 * How the keys of a tune move when it is transposed. All keys move by one interval, so that ties and the signs between
 * them stay; a key that would then have more than seven sharps or flats is spelled by itself.
 *
 * @param usual the interval of all keys that it suits
 */
public record KeyMove(Interval usual) {

    /** Sharps or flats that a key signature has at most. */
    public static final int MOST_FIFTHS = 7;

    /**
     * Returns the move for the key signatures of a tune.
     *
     * @param signatures sharps of every signature in score order, flats if negative; empty if there is none
     * @param semitones how far to transpose
     */
    public static KeyMove of(Collection<Integer> signatures, int semitones) {
        Interval best = Interval.simplest(0, semitones);
        int fewestOdd = Integer.MAX_VALUE;
        for (int signature : signatures.isEmpty() ? List.of(0) : signatures) {
            Interval interval = Interval.simplest(signature, semitones);
            int odd = (int) signatures.stream()
                    .filter(other -> Math.abs(other + interval.fifths()) > MOST_FIFTHS)
                    .count();
            if (odd < fewestOdd) {
                fewestOdd = odd;
                best = interval;
            }
        }
        return new KeyMove(best);
    }

    /** Returns the interval by which the notes in a key move. */
    public Interval in(int signature) {
        return Math.abs(signature + usual.fifths()) <= MOST_FIFTHS
                ? usual
                : Interval.simplest(signature, usual.semitones());
    }

    /** Returns the signature that takes the place of another. */
    public int signature(int before) {
        return before + in(before).fifths();
    }
}
