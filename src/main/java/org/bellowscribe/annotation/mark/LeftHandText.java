package org.bellowscribe.annotation.mark;

import java.util.function.Function;
import org.bellowscribe.annotation.style.LeftHandLabels;
import org.bellowscribe.lefthand.Stroke;
import org.bellowscribe.theory.Fraction;

/** Writes a label for each stroke of the left hand that falls within one note, one after the other. */
final class LeftHandText {

    private final LeftHandLabels signs;
    private final Function<Stroke, String> label;
    private final StringBuilder text = new StringBuilder();
    private Fraction last = Fraction.ZERO;

    /**
     * Creates an empty text.
     *
     * @param signs what stands between labels
     */
    LeftHandText(LeftHandLabels signs, Function<Stroke, String> label) {
        this.signs = signs;
        this.label = label;
    }

    /**
     * Adds what is pressed. What begins later than the note has a separator before it, also the first one.
     *
     * @param time time from the start of the note that carries the text to the stroke
     */
    void add(Fraction time, Stroke stroke) {
        if (!time.equals(last)) {
            text.append(signs.then());
        } else if (!text.isEmpty()) {
            text.append(signs.together());
        }
        text.append(label.apply(stroke));
        last = time;
    }

    /** Returns the text; empty if nothing is pressed. */
    @Override
    public String toString() {
        return text.toString();
    }
}
