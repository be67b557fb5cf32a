package org.bellowscribe.replay;

/**
 * One playing of a step. {@code openingAfter} is {@code openingBefore} plus {@code seconds * flow + airTaken} on the
 * pull, minus the same on the push.
 *
 * @param step 0-based index of the step
 * @param pass which playing of that step this is, from 1
 * @param seconds how long it sounds
 * @param flow air that the reeds take, at the loudness played, in RU
 * @param nominalFlow air that the reeds take on an average over the step at usual loudness, in RU
 * @param airTaken air through the air button, in RU.s, 0 or more
 * @param openingBefore opening of the bellows when it starts, in RU.s
 * @param openingAfter opening of the bellows when it ends, in RU.s
 */
public record Sounding(
        int step,
        int pass,
        double seconds,
        double flow,
        double nominalFlow,
        double airTaken,
        double openingBefore,
        double openingAfter) {

    /** Returns by how much the air button opens the bellows, in RU.s; closes them if negative. */
    public double airMoved() {
        return openingAfter >= openingBefore ? airTaken : -airTaken;
    }
}
