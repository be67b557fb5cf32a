package org.bellowscribe.annotation;

/** What a mark can fix at an event. */
public enum MarkAspect {
    /** The buttons and with them the direction. */
    BUTTONS,
    /** The sounds of the left hand. */
    LEFT_HAND,
    /** The way the bellows go. */
    DIRECTION,
    /** How far the air button is pressed. */
    AIR,
    /** The place of the hand. */
    HAND
}
