package org.bellowscribe.musicxml;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.bellowscribe.theory.Fraction;

/** What holds in its part at each of some notes: divisions, key and transposition. */
final class PartContext implements XmlVisitor {

    /**
     * What holds at a note.
     *
     * @param divisions parts of a quarter in which the score counts
     * @param fifths sharps of the key as it is written, flats if negative
     * @param chromatic semitones by which the part sounds higher than it is written
     */
    record At(BigDecimal divisions, int fifths, int chromatic) {

        /** Returns a time in the divisions of the score, rounded to a whole number. */
        String offset(Fraction time) {
            return divisions
                    .multiply(BigDecimal.valueOf(time.numerator()))
                    .divide(BigDecimal.valueOf(time.denominator()), 0, RoundingMode.HALF_EVEN)
                    .toPlainString();
        }
    }

    private static final At START = new At(BigDecimal.ONE, 0, 0);

    private final Set<Integer> wanted;
    private final Map<String, At> parts = new HashMap<>();
    private final Map<Integer, At> found = new HashMap<>();
    private String part = "";
    private int count;

    /**
     * Creates a visitor.
     *
     * @param wanted 0-based places of the notes among all notes in measures
     */
    PartContext(Set<Integer> wanted) {
        this.wanted = wanted;
    }

    /** Returns what holds at a wanted note that was seen. */
    At of(int note) {
        return found.getOrDefault(note, START);
    }

    @Override
    public void start(XmlElement element) {
        String id = PartKeys.partId(element);
        part = id == null ? part : id;
        if (NoteAnchors.isNote(element)) {
            if (wanted.contains(count)) {
                found.put(count, parts.getOrDefault(part, START));
            }
            count++;
        }
    }

    @Override
    public void end(XmlElement element) {
        At at = parts.getOrDefault(part, START);
        String content = element.name().length() > 9 ? "" : element.plainContent();
        if (element.isIn("attributes")
                && element.name().equals("divisions")
                && content.matches("\\d{1,9}(\\.\\d{1,9})?")) {
            parts.put(part, new At(new BigDecimal(content), at.fifths, at.chromatic));
        } else if (element.isIn("key") && element.name().equals("fifths") && content.matches("[+-]?\\d{1,2}")) {
            parts.put(part, new At(at.divisions, Integer.parseInt(content), at.chromatic));
        } else if (element.isIn("transpose")
                && element.name().equals("chromatic")
                && content.matches("[+-]?\\d{1,2}")) {
            parts.put(part, new At(at.divisions, at.fifths, Integer.parseInt(content)));
        }
    }
}
