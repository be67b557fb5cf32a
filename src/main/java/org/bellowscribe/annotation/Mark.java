package org.bellowscribe.annotation;

import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.PitchClass;

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
    record Syllable(int event, String line, String text) implements Mark {
        /** Checks that there is a text: two renderers lose the page at an empty one. */
        public Syllable {
            checkText(text);
        }
    }

    /**
     * Words above the staff. Different texts of one topic at an event are all written.
     *
     * @param event the event; may be a rest
     * @param topic what they are about
     * @param text text, never empty
     */
    record Words(int event, Topic topic, String text) implements Mark {

        /**
         * So many characters words at one place should have: they are read at a glance, stand above a measure of quavers,
         * and are not cut at the end of a line.
         */
        public static final int LONGEST = 15;

        /** Checks that there is a text. */
        public Words {
            checkText(text);
        }
    }

    /**
     * A finger number.
     *
     * @param event the event
     * @param note 0-based place among the pitches of the event
     * @param finger 1 to 5
     */
    record Finger(int event, int note, int finger) implements Mark {
        /** Checks the finger. */
        public Finger {
            if (finger < 1 || finger > 5) {
                throw new IllegalArgumentException("The finger (%d) must be between 1 and 5.".formatted(finger));
            }
        }
    }

    /**
     * A sign of the standard music font layout.
     *
     * @param event the event; must not be a rest
     * @param smufl canonical name of the glyph in SMuFL, such as {@code accdnPush}
     */
    record Sign(int event, String smufl) implements Mark {
        /** Checks that there is a name. */
        public Sign {
            checkText(smufl);
        }
    }

    /**
     * A chord symbol.
     *
     * @param event the event
     * @param offset time from the start of the event
     * @param root root, as the sheet sounds
     * @param third its third; {@code NONE} for a chord without
     * @param bass its bass; the root unless there is another
     */
    record Symbol(int event, Fraction offset, PitchClass root, Third third, PitchClass bass) implements Mark {
        /** Returns its name, such as {@code Em} or {@code C/A}. */
        public String name() {
            String quality = third == Third.MINOR ? "m" : third == Third.NONE ? "5" : "";
            return root + quality + (bass.equals(root) ? "" : "/" + bass);
        }
    }

    /**
     * A line over notes.
     *
     * @param event the first of them; no rest
     * @param last the last of them, the same or one behind it; no rest
     */
    record Bracket(int event, int last) implements Mark {}

    private static void checkText(String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException("The text (%s) must not be empty.".formatted(text));
        }
    }
}
