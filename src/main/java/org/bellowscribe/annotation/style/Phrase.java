package org.bellowscribe.annotation.style;

import java.util.Locale;

/**
 * What is said in words: to be read out, heard or felt, not set as signs. Each has an attribute of its name in a style's
 * {@code <spoken>} element; places stand in braces there.
 */
public enum Phrase implements Wording {
    /** What the listing is of; {@code {title}}. */
    TITLE,
    /** The instrument; {@code {name}}. */
    INSTRUMENT,
    /** The key; {@code {key}}. */
    KEY,
    /** The key that sounds where the sheet has another; {@code {key}} and {@code {semitones}}. */
    SOUNDING,
    /** The time; {@code {beats}} and {@code {type}}. */
    TIME,
    /** How fast; {@code {quarters}} a minute. */
    TEMPO,
    /** The measures as they sound; {@code {measures}}. */
    ORDER,
    /** A run of measures; {@code {first}} and {@code {last}}. */
    FROM_TO,
    /** That each note lasts until the next line. */
    LASTING,
    /** How far the bellows are open before they first move; {@code {opening}}. */
    START,
    /** The same where a repeat comes back; {@code {opening}}. */
    AGAIN,
    /** The bellows are closed. */
    OPEN_NOT,
    /** The bellows are open by a quarter. */
    OPEN_QUARTER,
    /** The bellows are open by a third. */
    OPEN_THIRD,
    /** The bellows are open by half. */
    OPEN_HALF,
    /** The bellows are open by two thirds. */
    OPEN_TWO_THIRDS,
    /** The bellows are open by three quarters. */
    OPEN_THREE_QUARTERS,
    /** The bellows are open all the way. */
    OPEN_WIDE,
    /** Where a line is; {@code {measure}} and {@code {beat}}. */
    PLACE,
    /** Half a beat late; {@code {beat}}. */
    BEAT_HALF,
    /** A quarter of a beat late; {@code {beat}}. */
    BEAT_QUARTER,
    /** Three quarters of a beat late; {@code {beat}}. */
    BEAT_THREE_QUARTERS,
    /** A third of a beat late; {@code {beat}}. */
    BEAT_THIRD,
    /** Two thirds of a beat late; {@code {beat}}. */
    BEAT_TWO_THIRDS,
    /** Any other part of a beat late; {@code {beat}} and {@code {part}}. */
    BEAT_PART,
    /** A rest. */
    REST,
    /** A note that only sounds on. */
    HELD_OVER,
    /** The bellows close. */
    PUSH,
    /** The bellows open. */
    PULL,
    /** A button where there is one row, or a concertina's; {@code {button}}. */
    BUTTON,
    /** A button of a row; {@code {button}} and {@code {row}}. */
    BUTTON_OF,
    /** The outer row, as it stands in {@link #BUTTON_OF}. */
    ROW_OUTER,
    /** The middle row, as it stands in {@link #BUTTON_OF}. */
    ROW_MIDDLE,
    /** The inner row, as it stands in {@link #BUTTON_OF}. */
    ROW_INNER,
    /** Any row of more than three, as it stands in {@link #BUTTON_OF}; {@code {row}}. */
    ROW_OTHER,
    /** A button that stays down while the bellows turn. */
    STILL_DOWN,
    /** One finger; {@code {finger}}. */
    FINGER,
    /** Several fingers; {@code {fingers}}. */
    FINGERS,
    /** The place of the hand; {@code {button}}. */
    HAND,
    /** A bass; {@code {note}}. */
    BASS,
    /** A major chord or one without a third; {@code {note}}. */
    CHORD,
    /** A minor chord; {@code {note}}. */
    CHORD_MINOR,
    /** What the left hand sounds later than the note; {@code {beat}} and {@code {sounds}}. */
    LATER,
    /** The same in a measure after that of the note; {@code {measure}}, {@code {beat}} and {@code {sounds}}. */
    LATER_MEASURE,
    /** The air button up to fully. */
    AIR_FULL,
    /** The air button lightly. */
    AIR_LIGHT,
    /** Stands between two things at once, with its spaces. */
    AND,
    /** The note C. */
    NOTE_C,
    /** The note D. */
    NOTE_D,
    /** The note E. */
    NOTE_E,
    /** The note F. */
    NOTE_F,
    /** The note G. */
    NOTE_G,
    /** The note A. */
    NOTE_A,
    /** The note B. */
    NOTE_B,
    /** A raised note; {@code {note}}. */
    SHARP,
    /** A lowered note; {@code {note}}. */
    FLAT,
    /** The note E flat. */
    E_FLAT,
    /** The note A flat. */
    A_FLAT,
    /** The note B flat. */
    B_FLAT,
    /** A major key; {@code {note}}. */
    MAJOR,
    /** A minor key; {@code {note}}. */
    MINOR,
    /** A dorian key; {@code {note}}. */
    DORIAN,
    /** A phrygian key; {@code {note}}. */
    PHRYGIAN,
    /** A lydian key; {@code {note}}. */
    LYDIAN,
    /** A mixolydian key; {@code {note}}. */
    MIXOLYDIAN,
    /** A locrian key; {@code {note}}. */
    LOCRIAN;

    @Override
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
