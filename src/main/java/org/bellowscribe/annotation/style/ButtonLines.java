package org.bellowscribe.annotation.style;

/** What the lines of buttons below the notes stand for. */
public enum ButtonLines {
    /** All buttons share one line. */
    ONE,
    /** Pushed notes have a line above that of pulled notes. */
    TWO,
    /** Each row of buttons has a line, the outer row the topmost. */
    ROWS
}
