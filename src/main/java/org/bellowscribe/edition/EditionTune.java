package org.bellowscribe.edition;

import java.util.List;
import java.util.SortedSet;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.syllabus.Thing;

/**
 * A tune of an edition.
 *
 * @param title how the book calls it
 * @param file name of its sheet
 * @param tune all that was decided
 * @param style labels and signs of its sheet
 * @param marks ids of the marks on its sheet
 * @param news what is new in it
 * @param notes notes for the pupil
 * @param problems what there is to warn of, in sentences
 */
public record EditionTune(
        String title,
        String file,
        DecidedTune tune,
        Style style,
        List<String> marks,
        SortedSet<Thing> news,
        List<String> notes,
        List<String> problems) {

    /** Copies the lists. */
    public EditionTune {
        marks = List.copyOf(marks);
        notes = List.copyOf(notes);
        problems = List.copyOf(problems);
    }
}
