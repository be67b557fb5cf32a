package org.bellowscribe.instrument;

/** Draws the buttons of an instrument with both their notes, to hang up or to compare with a box. */
public final class KeyboardDrawing {

    private KeyboardDrawing() {}

    /** Returns the drawing in plain text, about 80 characters wide, each line with its line feed. */
    public static String text(Instrument instrument) {
        return KeyboardText.of(instrument, instrument, KeyboardWords.ENGLISH);
    }

    /** Returns the drawing as an SVG page of the size A4, in black and white. */
    public static String svg(Instrument instrument) {
        return KeyboardPage.of(instrument, instrument, KeyboardWords.ENGLISH);
    }

    /**
     * Returns the drawing in plain text with some of its notes.
     *
     * @param used the same instrument with those notes alone; every button is still there
     * @param words its words
     */
    public static String text(Instrument instrument, Instrument used, KeyboardWords words) {
        return KeyboardText.of(instrument, used, words);
    }

    /**
     * Returns the drawing as an SVG page with some of its notes.
     *
     * @param used the same instrument with those notes alone; every button is still there
     * @param words its words
     */
    public static String svg(Instrument instrument, Instrument used, KeyboardWords words) {
        return KeyboardPage.of(instrument, used, words);
    }
}
