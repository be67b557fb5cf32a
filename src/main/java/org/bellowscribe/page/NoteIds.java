package org.bellowscribe.page;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;

/** How the notes of a score are called where a page shows it, so that its script finds the event of a note. */
public final class NoteIds {

    private NoteIds() {}

    /**
     * Returns an id for each note of melody that is struck: {@code n12} for the first of event 12, {@code n12-1} for the
     * next that is struck with it.
     *
     * @return by 0-based place among all notes of the file
     */
    public static SortedMap<Integer, String> of(Tune tune) {
        return of(tune, "");
    }

    /**
     * Returns the same ids with something before them, so that two scores may stand on one page.
     *
     * @param before begins with a letter, or is empty
     */
    public static SortedMap<Integer, String> of(Tune tune, String before) {
        SortedMap<Integer, String> ids = new TreeMap<>();
        for (Event event : tune.events()) {
            List<Integer> notes = event.noteIndices();
            for (int i = 0; i < notes.size(); i++) {
                ids.put(notes.get(i), before + "n" + event.index() + (i == 0 ? "" : "-" + i));
            }
        }
        return ids;
    }
}
