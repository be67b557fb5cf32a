package org.bellowscribe.annotation.style;

import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.AirUse;

/**
 * Words beside the staff, usually above it.
 *
 * @param push the bellows close
 * @param pull the bellows open
 * @param airLight air button pressed lightly
 * @param airFull air button pressed up to fully
 * @param airBefore air button pressed in a rest that is not written as one, before this note
 * @param airGoesOn in place of the word for the air button at each further note over which it stays down; empty if each
 *     press has its word
 * @param directionWithAir direction and air at one note; places {@code {direction}} and {@code {air}}
 * @param hand place of the hand; place {@code {button}}, the button under the index finger
 * @param leftHand the left hand in a rest; place {@code {sounds}}
 * @param sounding the key that sounds where the sheet has another; places {@code {key}} and {@code {semitones}}
 * @param opening how far the bellows are open; place {@code {part}}, a fraction such as 1/3
 * @param closed the bellows are closed
 * @param fullyOpen the bellows are fully open
 * @param rows names of the rows
 * @param between what stands between words of several topics
 * @param above true if they stand above the staff, false below
 */
public record WordLabels(
        String push,
        String pull,
        String airLight,
        String airFull,
        String airBefore,
        String airGoesOn,
        Template directionWithAir,
        Template hand,
        Template leftHand,
        Template sounding,
        Template opening,
        String closed,
        String fullyOpen,
        RowNames rows,
        String between,
        boolean above) {

    /** Returns the word for a direction. */
    public String direction(BellowsDirection direction) {
        return direction == BellowsDirection.PUSH ? push : pull;
    }

    /**
     * Returns the word for the air button.
     *
     * @param use how far it is pressed
     * @throws IllegalArgumentException if it is not pressed
     */
    public String air(AirUse use) {
        return switch (use) {
            case LIGHT -> airLight;
            case FULL -> airFull;
            case NONE -> throw new IllegalArgumentException("The air use (NONE) must be LIGHT or FULL.");
        };
    }

    /** Returns the text for the key that sounds. */
    public String sounding(String key, String semitones) {
        return new Template(sounding.with("key", key)).with("semitones", semitones);
    }

    /** Returns the text for direction and air at one note. */
    public String directionAndAir(String direction, String air) {
        return new Template(directionWithAir.with("direction", direction)).with("air", air);
    }
}
