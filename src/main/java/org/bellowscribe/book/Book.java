package org.bellowscribe.book;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.bellowscribe.diagnostic.Place;

/**
 * A book as its file has it.
 *
 * @param title title of the book
 * @param byLearning true if the tunes stand so that each brings as little new as can be; false for the order of the file
 * @param folder where the scores are, seen from the folder of the book file
 * @param prints what is printed below the first line of every sheet
 * @param texts paragraphs of the front page
 * @param instruments the instruments, one edition for each, at least one
 * @param tunes the tunes; empty for all scores of the folder
 * @param wishes how all tunes are marked
 * @param place where it begins in its file
 */
public record Book(
        String title,
        boolean byLearning,
        String folder,
        Set<Print> prints,
        List<BookText> texts,
        List<BookInstrument> instruments,
        List<BookTune> tunes,
        Wishes wishes,
        Place place) {

    /** What can stand below the first line of a sheet. */
    public enum Print {
        /** What is new in the tune. */
        NEW,
        /** The notes for the pupil. */
        NOTES,
        /** What the signs of the sheet mean. */
        LEGEND
    }

    /** Copies the lists. */
    public Book {
        prints = Set.copyOf(new TreeSet<>(prints));
        texts = List.copyOf(texts);
        instruments = List.copyOf(instruments);
        tunes = List.copyOf(tunes);
    }

    /** Returns this book with other tunes. */
    public Book with(List<BookTune> others) {
        return new Book(title, byLearning, folder, prints, texts, instruments, others, wishes, place);
    }

    /** Returns the tunes of the edition for an instrument, in the order of the file. */
    public List<BookTune> tunesOn(BookInstrument instrument) {
        return tunes.stream()
                .filter(tune -> {
                    BookTune.Elsewise elsewise = tune.on(instrument);
                    return elsewise == null || !elsewise.leftOut();
                })
                .toList();
    }

    /** Returns how a tune is marked for an instrument of which the book says nothing else. */
    public Wishes wishes(BookInstrument instrument) {
        return instrument.wishes().over(wishes);
    }

    /** Returns how a tune is marked for an instrument: what is said nearest to it counts. */
    public Wishes wishes(BookInstrument instrument, BookTune tune) {
        BookTune.Elsewise elsewise = tune.on(instrument);
        Wishes nearest = elsewise == null ? Wishes.NONE : elsewise.wishes();
        return nearest.over(tune.wishes()).over(wishes(instrument));
    }
}
