package org.bellowscribe.musicxml;

import org.bellowscribe.annotation.style.Fonts;

/**
 * How marks look that are to be written.
 *
 * @param fonts fonts, sizes and colors
 * @param filler what stands on a line that has nothing to say at a note
 */
record MarkLook(Fonts fonts, String filler) {

    /** As the notation program likes. */
    static final MarkLook PLAIN = new MarkLook(Fonts.NONE, "\u00b7");
}
