package org.bellowscribe.marking;

/**
 * What to write out of the left hand, besides its letters.
 *
 * @param part true to add a part with its notes to the score
 * @param sheet true to write a sheet of its own beside the score
 */
public record LeftHandChoice(boolean part, boolean sheet) {

    /** How the name of the sheet ends. */
    public static final String SHEET = ".left-hand.musicxml";

    /** Nothing. */
    public static final LeftHandChoice NONE = new LeftHandChoice(false, false);
}
