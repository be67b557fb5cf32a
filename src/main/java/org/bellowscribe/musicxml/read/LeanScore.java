package org.bellowscribe.musicxml.read;

import java.util.List;
import java.util.Map;

/**
 * A score cut down to its music, always partwise.
 *
 * @param pieces what a parser would tell of it; every {@code <note>} has the attribute {@code id} with {@link #noteId} of
 *     its place in the whole original file, every {@code <harmony>} one with {@link #harmonyId}
 * @param partIds ids of the parts in the order of the text
 * @param bad vital values that could not be read, by the id of the note or harmony that holds them, else by
 *     {@link #partId} of the part
 * @param odd other values that were passed over, one for each name
 */
record LeanScore(LeanPieces pieces, List<String> partIds, Map<String, OddValue> bad, List<OddValue> odd) {

    static String noteId(int index) {
        return "note " + index;
    }

    static String harmonyId(int index) {
        return "harmony " + index;
    }

    static String partId(int index) {
        return "part " + index;
    }

    /** Returns the place of a note among all notes of the file. */
    static int noteIndex(String noteId) {
        return Integer.parseInt(noteId.substring("note ".length()));
    }
}
