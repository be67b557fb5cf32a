package org.bellowscribe.edition;

import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.style.BookText;
import org.bellowscribe.annotation.style.Phrase;
import org.bellowscribe.annotation.style.Wordings;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.KeyboardDrawing;
import org.bellowscribe.instrument.KeyboardWords;

/**
 * What stands before the tunes: the texts of the book, what the signs mean that occur in it, the buttons that it uses, and
 * cautions. All of it is made from the tunes as they are marked, so it agrees with them.
 */
public final class FrontPage {

    private final Edition edition;
    private final List<LegendEntry> legend;
    private final Instrument used;

    /**
     * Collects what occurs in an edition.
     *
     * @throws DiagnosedException if a mark is not known
     */
    public FrontPage(Edition edition) throws DiagnosedException {
        this.edition = edition;
        this.used = UsedButtons.of(edition);
        BookLegend signs = new BookLegend(edition.style(), edition.instrument().rows());
        for (Annotator annotator : Annotators.all()) {
            for (EditionTune tune : edition.tunes()) {
                if (tune.marks().contains(annotator.id())) {
                    legend(tune, List.of(annotator.id())).forEach(signs::add);
                }
            }
        }
        legend = signs.entries();
    }

    /**
     * Returns what the signs on the sheet of a tune mean, only those that occur.
     *
     * @throws DiagnosedException if a mark is not known
     */
    public static List<LegendEntry> legend(EditionTune tune) throws DiagnosedException {
        return legend(tune, tune.marks());
    }

    private static List<LegendEntry> legend(EditionTune tune, List<String> marks) throws DiagnosedException {
        return Annotators.legend(
                tune.tune().tune(), tune.tune().instrument(), tune.tune().solution(), tune.style(), marks);
    }

    /** Returns the texts of the book. */
    List<Edition.Paragraph> paragraphs() {
        return edition.paragraphs();
    }

    /** Returns the signs that occur. */
    List<LegendEntry> legend() {
        return legend;
    }

    /** Returns the edition. */
    Edition edition() {
        return edition;
    }

    /** Returns the drawing of the box with the notes that the book uses, in plain text. */
    String drawing() {
        return KeyboardDrawing.text(edition.instrument(), used, words());
    }

    /** Returns the drawing of the box with the notes that the book uses, as an SVG page. */
    public String svg() {
        return KeyboardDrawing.svg(edition.instrument(), used, words());
    }

    /** Returns how many notes of the box the book uses. */
    String buttonsInWords() {
        long notes = used.buttons().stream()
                .mapToLong(button -> (button.push() == null ? 0 : 1) + (button.pull() == null ? 0 : 1))
                .sum();
        return say(BookText.USED, "count", String.valueOf(notes));
    }

    /** Returns a text in the language of the book. */
    String say(BookText text) {
        return edition.style().book().say(text);
    }

    /** Returns a text with a value in its one place. */
    String say(BookText text, String place, String value) {
        return edition.style().book().say(text, place, value);
    }

    private KeyboardWords words() {
        Wordings<BookText> book = edition.style().book();
        Wordings<Phrase> spoken = edition.style().spoken();
        return new KeyboardWords(
                book.say(BookText.DRAWING_TITLE),
                spoken.say(Phrase.PUSH),
                spoken.say(Phrase.PULL),
                book.say(BookText.DRAWING_ROW),
                book.say(BookText.DRAWING_COLUMN),
                book.say(BookText.DRAWING_MELODY),
                book.say(BookText.DRAWING_BOTH_HANDS),
                book.say(BookText.DRAWING_BASSES),
                book.say(BookText.DRAWING_OPEN_BASSES),
                book.say(BookText.DRAWING_NO_BASSES),
                book.say(BookText.LEFT_HAND),
                book.say(BookText.RIGHT_HAND));
    }
}
