package org.bellowscribe.book;

import org.bellowscribe.diagnostic.Place;

/**
 * An instrument for which a book has an edition.
 *
 * @param id its id in the library, or the path of its file
 * @param folder name of the folder of its edition
 * @param wishes how the tunes are marked for it
 * @param place where it stands in the book file
 */
public record BookInstrument(String id, String folder, Wishes wishes, Place place) {

    /**
     * Returns the instrument of a book that names none.
     *
     * @param place where the book begins
     */
    static BookInstrument usual(String id, Place place) {
        return new BookInstrument(id, id, Wishes.NONE, place);
    }

    /** Returns the folder of an instrument that names none: its id, or the name of its file without the ending. */
    static String folderOf(String id) {
        String name = id.substring(Math.max(id.lastIndexOf('/'), id.lastIndexOf('\\')) + 1);
        return name.endsWith(".xml") ? name.substring(0, name.length() - ".xml".length()) : name;
    }
}
