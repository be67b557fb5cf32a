package org.bellowscribe.annotation.style;

import java.util.Locale;

/**
 * What the legend says about a sign. Each has an attribute of its name in a style's {@code <legend>} element; places stand in
 * braces there.
 */
public enum Meaning implements Wording {
    /** Close the bellows from this note on. */
    DIRECTION_PUSH,
    /** Open the bellows from this note on. */
    DIRECTION_PULL,
    /** Press the air button as far as needed. */
    AIR_FULL,
    /** Press the air button lightly. */
    AIR_LIGHT,
    /** Press the air button in the pause before the note. */
    AIR_BEFORE,
    /** Keep the air button down. */
    AIR_GOES_ON,
    /** How far the bellows are open at the start. */
    OPENING,
    /** How far the bellows are open, each time round. */
    OPENING_AGAIN,
    /** Button {@code {button}}. */
    BUTTON,
    /** Button {@code {button}}, {@code {row}}. */
    BUTTON_OF,
    /** Pushed. */
    PUSHED,
    /** Pulled. */
    PULLED,
    /** Upper line: pushed. */
    PUSHED_LINE,
    /** Lower line: pulled. */
    PULLED_LINE,
    /** Which row each line of numbers is for, from the top. */
    ROW_LINES,
    /** Buttons pressed together. */
    TOGETHER_BUTTONS,
    /** The button stays down while the bellows turn. */
    HELD,
    /** The index finger lies at button {@code {button}}. */
    HAND,
    /** Index, middle, ring and little finger. */
    FINGERS,
    /** Left hand: index, middle, ring and little finger. */
    LEFT_HAND_FINGERS,
    /** Bass {@code {note}}. */
    BASS,
    /** Chord of {@code {note}}. */
    CHORD,
    /** Chord of {@code {note}} minor. */
    CHORD_MINOR,
    /** One after the other while the note sounds. */
    THEN,
    /** After the note has begun. */
    LATER,
    /** Both together. */
    TOGETHER,
    /** The key that sounds, in semitones from the key of the sheet. */
    SOUNDING,
    /** What the left hand sounds, for others who play along. */
    CHORD_SYMBOL;

    @Override
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
