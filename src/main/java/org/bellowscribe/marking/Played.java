package org.bellowscribe.marking;

/**
 * What is played of a tune; what is printed is another matter.
 *
 * @param melody false if the right hand rests and only the bellows go as for the left hand
 * @param leftHand false if the left hand rests
 * @param air false if the air button is left alone
 */
public record Played(boolean melody, boolean leftHand, boolean air) {

    /** Both hands and the air button. */
    public static final Played ALL = new Played(true, true, true);

    /** Checks that some hand plays. */
    public Played {
        if (!melody && !leftHand) {
            throw new IllegalArgumentException("The melody or the left hand must be played.");
        }
    }
}
