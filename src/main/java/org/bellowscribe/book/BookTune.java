package org.bellowscribe.book;

import java.util.List;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/**
 * A tune of a book.
 *
 * @param file path of its score, seen from the folder of the scores
 * @param title how the book calls it; empty if as its score does
 * @param position its fixed place in a book that is ordered by learning, from 1; 0 if it is free
 * @param notes notes for the pupil
 * @param wishes how it is marked
 * @param elsewise what is otherwise on single instruments
 * @param place where it stands in the book file
 */
public record BookTune(
        String file,
        String title,
        int position,
        List<String> notes,
        Wishes wishes,
        List<Elsewise> elsewise,
        Place place) {

    /**
     * What is otherwise on one instrument.
     *
     * @param instrument id or file of the instrument as the book names it
     * @param leftOut true if the edition for it does not have the tune
     * @param wishes how it is marked there
     * @param place where it stands in the book file
     */
    public record Elsewise(String instrument, boolean leftOut, Wishes wishes, Place place) {}

    /** Copies the lists. */
    public BookTune {
        notes = List.copyOf(notes);
        elsewise = List.copyOf(elsewise);
    }

    /**
     * Returns a tune about which the book says nothing.
     *
     * @param file path of its score, seen from the folder of the scores
     * @param place where the book begins
     */
    public static BookTune plain(String file, Place place) {
        return new BookTune(file, "", 0, List.of(), Wishes.NONE, List.of(), place);
    }

    /** Returns what is otherwise on an instrument, or null if nothing is. */
    @Nullable
    Elsewise on(BookInstrument instrument) {
        return elsewise.stream()
                .filter(each -> each.instrument().equals(instrument.id()))
                .findFirst()
                .orElse(null);
    }
}
