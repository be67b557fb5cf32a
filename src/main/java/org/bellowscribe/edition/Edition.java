package org.bellowscribe.edition;

import java.util.List;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.instrument.Instrument;

/**
 * A book for one instrument.
 *
 * @param title title of the book
 * @param instrument the instrument
 * @param style labels and signs of the book; single tunes may have others
 * @param paragraphs texts of the front page
 * @param tunes the tunes in the order of the book
 * @param refused tunes that cannot be played so
 * @param order how the tunes stand, in a sentence
 */
public record Edition(
        String title,
        Instrument instrument,
        Style style,
        List<Paragraph> paragraphs,
        List<EditionTune> tunes,
        List<Refused> refused,
        String order) {

    /**
     * A paragraph of the front page.
     *
     * @param heading heading above it; empty if it goes on
     * @param text the paragraph
     */
    public record Paragraph(String heading, String text) {}

    /**
     * A tune that is not in the edition.
     *
     * @param title its title, or the name of its file if it could not be read
     * @param file name of the score's file
     * @param reason why, in a sentence
     */
    public record Refused(String title, String file, String reason) {}

    /** Copies the lists. */
    public Edition {
        paragraphs = List.copyOf(paragraphs);
        tunes = List.copyOf(tunes);
        refused = List.copyOf(refused);
    }
}
