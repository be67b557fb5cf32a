package org.bellowscribe.annotation;

/** What an annotator wants written at an event. */
public sealed interface Mark {

    /** Returns the 0-based index of the event. */
    int event();

    /**
     * A syllable of a lyric line.
     *
     * @param event the event; must not be a rest, as two renderers drop lyrics of rests
     * @param line name of the line in kebab-case, such as {@code buttons}; the same name is the same line
     * @param text text, never empty
     */
    record Syllable(int event, String line, String text) implements Mark {}

    /**
     * Words above the staff. Of several texts of one topic at an event the first is written.
     *
     * @param event the event; may be a rest
     * @param topic what they are about
     * @param text text, never empty
     */
    record Words(int event, Topic topic, String text) implements Mark {}

    /**
     * A finger number.
     *
     * @param event the event
     * @param note 0-based place among the pitches of the event
     * @param finger 1 to 5
     */
    record Finger(int event, int note, int finger) implements Mark {}
}
