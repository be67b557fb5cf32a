package org.bellowscribe.annotation;

/** What words are about. Words of several topics at one note are written as one text, in this order. */
public enum Topic {
    /** The way the bellows go. */
    DIRECTION,
    /** The air button; joined to the direction. */
    AIR,
    /** How far the bellows are open. */
    OPENING,
    /** The row that numbers without a sign belong to. */
    ROW,
    /** The place of the hand. */
    HAND,
    /** The left hand where no note of the melody can carry it. */
    LEFT_HAND,
    /** The key that sounds where it is not that of the sheet. */
    KEY,
    /** For which other boxes a line of numbers is. */
    ALSO_FOR,
    /** A tempo that is not that of the tune. */
    TEMPO,
    /** Anything else. */
    OTHER
}
