package org.bellowscribe.score;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one written measure says about the order of play. Signs "at the start" stand before its first note, signs "at
 * the end" after its last.
 *
 * @param repeatStart a repeated section starts here
 * @param repeatEnd the repeat at the end, or null
 * @param endingStart numbers of the ending that starts here (empty list: an ending without a number), or null if none
 *     starts
 * @param endingStop true if an ending stops at the end
 * @param segno label of the segno at the start (may be empty), or null
 * @param coda label of the coda at the start (may be empty), or null
 * @param toCoda label of the coda to which the player leaves at the end (may be empty), or null
 * @param jump the da capo or dal segno at the end, or null
 * @param fine true if the tune ends here after a jump
 * @param times the times of playing this measure, from 1, at which jump, departure and fine at its end hold; empty: as
 *     the usual rules say
 */
public record RoadSigns(
        boolean repeatStart,
        @Nullable RepeatEnd repeatEnd,
        @Nullable List<Integer> endingStart,
        boolean endingStop,
        @Nullable String segno,
        @Nullable String coda,
        @Nullable String toCoda,
        @Nullable Jump jump,
        boolean fine,
        List<Integer> times) {

    /** A measure that says nothing. */
    public static final RoadSigns NONE =
            new RoadSigns(false, null, null, false, null, null, null, null, false, List.of());

    /** Copies the list. */
    public RoadSigns {
        endingStart = endingStart == null ? null : List.copyOf(endingStart);
        times = List.copyOf(times);
    }

    /** Returns true if the player may leave the straight road at the end because of a jump, a coda or a fine. */
    boolean mayLeave() {
        return fine || jump != null || toCoda != null;
    }

    /** Returns the signs with a repeated section that starts here. */
    public RoadSigns withRepeatStart() {
        return new RoadSigns(true, repeatEnd, endingStart, endingStop, segno, coda, toCoda, jump, fine, times);
    }

    /** Returns the signs with a repeat at the end. */
    public RoadSigns withRepeatEnd(RepeatEnd end) {
        return new RoadSigns(repeatStart, end, endingStart, endingStop, segno, coda, toCoda, jump, fine, times);
    }

    /** Returns the signs with an ending that starts here. */
    public RoadSigns withEndingStart(List<Integer> numbers) {
        return new RoadSigns(repeatStart, repeatEnd, numbers, endingStop, segno, coda, toCoda, jump, fine, times);
    }

    /** Returns the signs with an ending that stops at the end. */
    public RoadSigns withEndingStop() {
        return new RoadSigns(repeatStart, repeatEnd, endingStart, true, segno, coda, toCoda, jump, fine, times);
    }

    /** Returns the signs with a segno. */
    public RoadSigns withSegno(String label) {
        return new RoadSigns(repeatStart, repeatEnd, endingStart, endingStop, label, coda, toCoda, jump, fine, times);
    }

    /** Returns the signs with a coda that starts here; null takes it away. */
    public RoadSigns withCoda(@Nullable String label) {
        return new RoadSigns(repeatStart, repeatEnd, endingStart, endingStop, segno, label, toCoda, jump, fine, times);
    }

    /** Returns the signs with a departure to a coda at the end. */
    public RoadSigns withToCoda(String label) {
        return new RoadSigns(repeatStart, repeatEnd, endingStart, endingStop, segno, coda, label, jump, fine, times);
    }

    /** Returns the signs with a jump at the end. */
    public RoadSigns withJump(Jump newJump) {
        return new RoadSigns(
                repeatStart, repeatEnd, endingStart, endingStop, segno, coda, toCoda, newJump, fine, times);
    }

    /** Returns the signs with a fine at the end. */
    public RoadSigns withFine() {
        return new RoadSigns(repeatStart, repeatEnd, endingStart, endingStop, segno, coda, toCoda, jump, true, times);
    }

    /** Returns the signs, those at the end obeyed only at some times of playing the measure. */
    public RoadSigns withTimes(List<Integer> only) {
        return new RoadSigns(repeatStart, repeatEnd, endingStart, endingStop, segno, coda, toCoda, jump, fine, only);
    }
}
